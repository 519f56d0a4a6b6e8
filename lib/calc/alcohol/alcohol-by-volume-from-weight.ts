import { percent, type Percent } from "../units";
import { ethanolDensity } from "./ethanol-density";

/** Density of pure ethanol at 20 °C, kg/L. */
const ETHANOL = 0.78924;

/**
 * Converts alcohol by mass to alcohol by volume at 20 °C, for a mixture of ethanol and water.
 *
 * What a distillation hands over. Beer holds extract too and is denser, so it has more alcohol by volume for the same
 * share of its mass: `alcoholByVolume` counts that.
 *
 * @param alcoholByWeight - Ethanol, % of the mass.
 * @returns Ethanol, % by volume, within 0.002.
 * @validRange 0 to 100 %.
 * @throws {@link OutOfRangeError} when `alcoholByWeight` is outside the valid range.
 * @source OIML R 22 1973 (docs/sources.md#oiml-r22)
 * @example
 * alcoholByVolumeFromWeight(percent(5)); // 6.268
 */
export function alcoholByVolumeFromWeight(alcoholByWeight: Percent): Percent {
  // The formula ends a hair off the density of pure ethanol.
  return percent(Math.min(100, (alcoholByWeight * ethanolDensity(alcoholByWeight)) / ETHANOL));
}
