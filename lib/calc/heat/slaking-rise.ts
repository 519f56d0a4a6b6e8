import { interpolateLinear } from "../numerics";
import type { Percent } from "../units";

/** Moisture, % of mass, and rise, K. The row for 3 % is left out: its two printed columns, °C and °F, contradict each other. */
const RISE_BY_MOISTURE = [
  [0, 3],
  [1, 2.8],
  [2, 2.3],
  [4, 1.5],
  [6, 1.3],
  [8, 1],
] as const;

/**
 * Gives by how much the heat of wetting warms a mash of usual thickness.
 *
 * A small mash loses most of it through its walls, so `strikeTemperature` leaves it out; subtract it for a large one.
 *
 * @param moisture - Water in the malt, % of mass.
 * @returns Rise, K, by straight lines between the rows of the table.
 * @validRange 0 to 8 % moisture.
 * @throws {@link OutOfRangeError} when `moisture` is outside the valid range.
 * @source Brewing Room Book 1984/85, initial mash temperature (docs/sources.md#brewing-room-book-1985)
 * @example
 * slakingRise(percent(4)); // 1.5
 */
export function slakingRise(moisture: Percent): number {
  return interpolateLinear({ quantity: "moisture", unit: "%", rows: RISE_BY_MOISTURE, x: moisture });
}
