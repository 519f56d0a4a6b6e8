import { requireInRange } from "../errors";
import { volumesCo2, type Celsius, type VolumesCo2 } from "../units";
import { SOLUBILITY_RANGE } from "./gauge-pressure";

/** Where the parabola is lowest, °F. */
const LOWEST_F = 0.050062 / (2 * 0.00026555);

/**
 * Gives the carbon dioxide that beer keeps after fermentation in a vessel open to the air.
 *
 * @param celsius - Warmest temperature of the beer since fermentation ended, °C: what was lost then does not come back.
 * @returns Volumes of CO2 at one atmosphere of it.
 * @validRange −2 to 45 °C. The parabola turns upward at 34.6 °C; above that its lowest value, 0.68, holds, which asks
 * for too little priming sugar rather than too much.
 * @throws {@link OutOfRangeError} when `celsius` is outside the valid range.
 * @source Common practice, printed with the force-carbonation tables (docs/sources.md#trade-practice)
 * @example
 * residualCo2(celsius(10)); // 1.20
 */
export function residualCo2(celsius: Celsius): VolumesCo2 {
  requireInRange("temperature", celsius, SOLUBILITY_RANGE.celsius);
  const f = Math.min(LOWEST_F, celsius * 1.8 + 32);
  return volumesCo2(3.0378 - 0.050062 * f + 0.00026555 * f * f);
}
