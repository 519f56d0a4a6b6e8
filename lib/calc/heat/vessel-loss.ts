import { requireInRange } from "../errors";
import { squareMetres, wattsPerKelvin, type SquareMetres, type WattsPerKelvin } from "../units";

export const INSULATION_RANGE = {
  thickness: { unit: "mm", min: 0, max: 500 },
  conductivity: { unit: "W/(m·K)", min: 0.01, max: 400 },
} as const;

/** From a warm wall to still room air, by convection and radiation together, W/(m²·K). Common practice, no source. */
const TO_THE_ROOM = 11;

/**
 * Estimates the loss coefficient of a vessel from its wall and insulation, for `heatUp` and the rests.
 *
 * The wall itself counts as no hindrance. A figure learned from the cooling of the real vessel replaces this.
 *
 * @param a.wallM2 - Surface of walls, bottom and lid that is warm, m².
 * @param a.insulationMm - Thickness of the insulation, mm; 0 for a bare vessel.
 * @param a.conductivity - Conductivity of the insulation, W/(m·K): about 0.04 for foam and felt.
 * @returns Heat lost per kelvin above the air, W/K; within about 30 %.
 * @validRange 0 to 100 m², 0 to 500 mm, 0.01 to 400 W/(m·K).
 * @throws {@link OutOfRangeError} when an argument is outside its range.
 * @source Two resistances in series (docs/sources.md#energy-balance); film: docs/sources.md#trade-practice
 * @example
 * vesselLoss({ wallM2: squareMetres(0.8), insulationMm: 0, conductivity: 0.04 }); // 8.8
 */
export function vesselLoss({
  wallM2,
  insulationMm,
  conductivity,
}: {
  readonly wallM2: SquareMetres;
  readonly insulationMm: number;
  readonly conductivity: number;
}): WattsPerKelvin {
  requireInRange("surface of the vessel", wallM2, squareMetres.range);
  requireInRange("insulation", insulationMm, INSULATION_RANGE.thickness);
  requireInRange("conductivity", conductivity, INSULATION_RANGE.conductivity);
  return wattsPerKelvin(wallM2 / (1 / TO_THE_ROOM + insulationMm / 1000 / conductivity));
}
