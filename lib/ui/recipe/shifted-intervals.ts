import { QUANTITY_IDS, type Interval, type Intervals, type Ledger, type QuantityId } from "@/lib/calc/ledger";

/**
 * Intervals of an earlier ledger around the numbers of a later one. They take longer to compute than the numbers, and
 * for that moment the earlier width is the best there is.
 */
export function shiftedIntervals(intervals: Intervals, from: Ledger, to: Ledger): Intervals {
  const shifted: Partial<Record<QuantityId, Interval>> = {};
  for (const id of QUANTITY_IDS) {
    const interval = intervals[id];
    const [before, now] = [from.quantities[id], to.quantities[id]];
    if (interval === undefined || before === null || now === null) continue;
    shifted[id] = { low80: interval.low80 + now - before, high80: interval.high80 + now - before };
  }
  return shifted;
}
