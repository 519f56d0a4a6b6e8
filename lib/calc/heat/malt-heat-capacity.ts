import { interpolateLinear } from "../numerics";
import { joulesPerKilogramKelvin, type JoulesPerKilogramKelvin, type Percent } from "../units";
import { WATER_HEAT_CAPACITY } from "./wort-heat-capacity";

/** Moisture, % of mass, and specific heat over that of water. */
const HEAT_RATIO_BY_MOISTURE = [
  [0, 0.38],
  [1, 0.38],
  [2, 0.39],
  [3, 0.4],
  [4, 0.4],
  [6, 0.41],
  [8, 0.42],
] as const;

/**
 * Gives the specific heat of malt, which rises with its moisture.
 *
 * @param moisture - Water in the malt, % of mass.
 * @returns Specific heat, J/(kg·K), by straight lines between the rows of the table.
 * @validRange 0 to 8 % moisture.
 * @throws {@link OutOfRangeError} when `moisture` is outside the valid range.
 * @source Brewing Room Book 1984/85, initial mash temperature (docs/sources.md#brewing-room-book-1985)
 * @example
 * maltHeatCapacity(percent(6)); // 1717
 */
export function maltHeatCapacity(moisture: Percent): JoulesPerKilogramKelvin {
  const ratio = interpolateLinear({ quantity: "moisture", unit: "%", rows: HEAT_RATIO_BY_MOISTURE, x: moisture });
  return joulesPerKilogramKelvin(ratio * WATER_HEAT_CAPACITY);
}
