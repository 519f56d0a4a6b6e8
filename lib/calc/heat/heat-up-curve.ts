import { celsius, kilograms } from "../units";
import type { TemperatureCurve } from "./chilling";
import { heatUp, type HeatUp, type HeatUpOutcome } from "./heat-up";

export type HeatUpCurve =
  { readonly ok: true; readonly curve: TemperatureCurve } | (HeatUpOutcome & { readonly ok: false });

const PIECES = 12;

/**
 * Draws the temperature of a kettle while it heats.
 *
 * Equal pieces of temperature, each by `heatUp` with what the piece before left in the kettle.
 *
 * @param a - The kettle, its contents and its surroundings.
 * @returns Minutes and °C from the start to the target, thirteen points; or the temperature where losses meet the power.
 * @validRange 0 to 35 °P, 0 to 102 °C, air −30 to 60 °C.
 * @throws {@link OutOfRangeError} when an argument is outside its range.
 * @source Energy balance (docs/sources.md#energy-balance)
 * @example
 * heatUpCurve({ ...kettle, fromC: celsius(67), toC: celsius(100) }); // { ok: true, curve: [[0, 67], [2.4, 69.75], …] }
 */
export function heatUpCurve(a: HeatUp): HeatUpCurve {
  const whole = heatUp(a);
  if (!whole.ok) return whole;
  const curve: (readonly [number, number])[] = [[0, a.fromC]];
  if (a.toC <= a.fromC) return { ok: true, curve };
  let massKg = a.massKg;
  let fromC = a.fromC;
  let minute = 0;
  for (let i = 1; i <= PIECES; i++) {
    const toC = i === PIECES ? a.toC : celsius(a.fromC + ((a.toC - a.fromC) * i) / PIECES);
    const piece = heatUp({ ...a, massKg, fromC, toC });
    if (!piece.ok) return piece;
    minute += piece.seconds / 60;
    massKg = kilograms(Math.max(0, massKg - piece.evaporatedKg));
    fromC = toC;
    curve.push([minute, toC]);
  }
  return { ok: true, curve };
}
