import { requireInRange } from "../errors";
import { percent, specificGravity, type Percent, type SpecificGravity } from "../units";

/**
 * Estimates alcohol by volume by the popular straight line, 131.25 times the drop of gravity.
 *
 * Offered for comparison with figures found elsewhere: against Balling it reads 0.1 points low from 1.060 to 1.015 and
 * 0.4 points from 1.100 to 1.025. `alcoholByVolume` is the method of record.
 *
 * @returns Alcohol, % by volume.
 * @validRange Gravities 0.98 to 1.2, the final one not above the original.
 * @throws {@link OutOfRangeError} when a gravity is outside the valid range.
 * @source Common practice (docs/sources.md#trade-practice)
 * @example
 * alcoholByVolumeLinear({ originalSg: specificGravity(1.05), finalSg: specificGravity(1.01) }); // 5.25
 */
export function alcoholByVolumeLinear({
  originalSg,
  finalSg,
}: {
  readonly originalSg: SpecificGravity;
  readonly finalSg: SpecificGravity;
}): Percent {
  requireInRange("original gravity", originalSg, specificGravity.range);
  requireInRange("final gravity", finalSg, { ...specificGravity.range, max: originalSg });
  return percent(131.25 * (originalSg - finalSg));
}
