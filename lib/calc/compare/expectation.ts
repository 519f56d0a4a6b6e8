import type { Interval } from "../ledger";
import { Z80 } from "../statistics";

/**
 * Half-width of the central 80 % of what a reading may differ from its prediction.
 *
 * @param interval - 80 % interval of the prediction; null where the planned value was decided, not predicted.
 * @param sd - Standard uncertainty of the reading.
 * @returns Half-width in the unit of the quantity.
 */
export function halfWidth80(interval: Interval | null, sd: number): number {
  const predicted = interval === null ? 0 : (interval.high80 - interval.low80) / 2;
  return Math.hypot(predicted, Z80 * sd);
}
