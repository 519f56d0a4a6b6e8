import { integrateOde, type Slopes } from "../numerics";
import { fraction, type Fraction } from "../units";
import { degradationRate, isomerisationRate } from "./isomerisation-rates";
import { requireCurve, type TemperatureCurve } from "./temperature-curve";

/**
 * Finds the share of the alpha acids that is iso-alpha acid at the end of a temperature curve, before all losses.
 *
 * da/dt = −k1 a and di/dt = k1 a − k2 i. Wort, trub and yeast take away about half of it: Tinseth's 0.231 for 60 min
 * at 1.050 stands beside 0.476 here.
 *
 * @param a.curve - Minutes and °C, by rising minute, with straight lines between.
 * @returns Iso-alpha acids over the alpha acids at the start, fraction by moles.
 * @validRange 0 to 110 °C; studied at 90 to 130 °C.
 * @throws {@link OutOfRangeError} when the curve runs back in time or leaves the valid range.
 * @source Malowicki and Shellhammer 2005, J. Agric. Food Chem. 53:4434 (docs/sources.md#malowicki-shellhammer-2005)
 * @example
 * isoFraction({ curve: [[0, 100], [60, 100]] }); // 0.476
 */
export function isoFraction({ curve }: { readonly curve: TemperatureCurve }): Fraction {
  requireCurve(curve);
  let state: readonly number[] = [1, 0];
  let before = curve[0];
  for (const point of curve) {
    if (before !== undefined && point[0] > before[0]) state = along(before, point, state);
    before = point;
  }
  return fraction(Math.min(1, Math.max(0, state[1] ?? 0)));
}

function along(
  [fromMin, fromC]: readonly [number, number],
  [toMin, toC]: readonly [number, number],
  start: readonly number[],
): readonly number[] {
  const kelvinPerMinute = (toC - fromC) / (toMin - fromMin);
  const slopes: Slopes = (minute, [alpha = 0, iso = 0], out) => {
    const celsius = fromC + kelvinPerMinute * (minute - fromMin);
    const formed = isomerisationRate(celsius) * alpha;
    out[0] = -formed;
    out[1] = formed - degradationRate(celsius) * iso;
  };
  // Smooth and never stiff, so it always gets to the end.
  return integrateOde({ slopes, from: fromMin, to: toMin, start, relative: 1e-9, absolute: 1e-12 }).y;
}
