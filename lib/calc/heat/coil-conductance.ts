import { requireInRange } from "../errors";
import { squareMetres, wattsPerKelvin, type SquareMetres, type WattsPerKelvin } from "../units";

/** Heat transfer per area of an immersion coil, W/(m²·K), and the range met in practice. Common practice, no source. */
const COIL = {
  still: { usual: 400, low: 250, high: 550 },
  stirred: { usual: 1000, low: 700, high: 1400 },
} as const;

export interface CoilConductance {
  readonly conductance: WattsPerKelvin;
  /** Ends of the range met in practice. */
  readonly low: WattsPerKelvin;
  readonly high: WattsPerKelvin;
}

/**
 * Estimates the conductance of an immersion coil from its outer surface, for `chill`.
 *
 * Still wort lies as a cold film on the coil; stirring, or moving the coil, strips it off and more than doubles the heat
 * that passes. The film inside, for water at full flow, is in the figures; a trickle does worse. A figure learned from one
 * measured chill replaces this.
 *
 * @param a.outsideM2 - Outer surface of the coil under the wort, m²: π × diameter × length.
 * @param a.wort - Whether the wort stands or is kept moving.
 * @returns Conductance and its range, W/K.
 * @validRange 0 to 100 m².
 * @throws {@link OutOfRangeError} when the surface is outside its range.
 * @source Common practice, no source (docs/sources.md#trade-practice)
 * @example
 * coilConductance({ outsideM2: squareMetres(0.4), wort: "stirred" }); // { conductance: 400, low: 280, high: 560 }
 */
export function coilConductance({
  outsideM2,
  wort,
}: {
  readonly outsideM2: SquareMetres;
  readonly wort: "still" | "stirred";
}): CoilConductance {
  requireInRange("surface of the coil", outsideM2, squareMetres.range);
  const perM2 = COIL[wort];
  return {
    conductance: wattsPerKelvin(perM2.usual * outsideM2),
    low: wattsPerKelvin(perM2.low * outsideM2),
    high: wattsPerKelvin(perM2.high * outsideM2),
  };
}
