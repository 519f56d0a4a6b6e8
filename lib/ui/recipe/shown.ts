import { QUANTITIES, type Interval, type Intervals, type QuantityId } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { formatQuantity, type FormattedQuantity } from "../format-quantity";
import type { Brewed } from "./compute";
import type { RowKeys } from "./read-rows";

/** A ledger with the rows that it was computed from. */
export interface Shown {
  readonly brewed: Brewed;
  readonly keys: RowKeys;
  /** What it gives back for a row, by list and key. */
  readonly results: ReadonlyMap<string, number>;
}

/** Intervals, and of what. */
export interface Ranges {
  readonly of: Shown;
  readonly intervals: Intervals;
}

/** A number of the ledger as one person reads it; null where there is none. */
export function shownQuantity(
  shown: Shown | null,
  ranges: Ranges | null,
  id: QuantityId,
  preferences: Preferences,
): FormattedQuantity | null {
  const value = shown?.brewed.ledger.quantities[id] ?? null;
  if (shown === null || value === null) return null;
  const { dimension } = QUANTITIES[id];
  return formatQuantity({ value, dimension, preferences, interval: intervalAround(value, shown, ranges, id) });
}

/**
 * The interval of a number. It takes longer to compute than the number itself; until it follows, the width of the last
 * one is the best there is.
 */
function intervalAround(value: number, shown: Shown, ranges: Ranges | null, id: QuantityId): Interval | null {
  const interval = ranges?.intervals[id];
  if (ranges === null || interval === undefined) return null;
  if (ranges.of === shown) return interval;
  const before = ranges.of.brewed.ledger.quantities[id];
  if (before === null) return null;
  const by = value - before;
  return { low80: interval.low80 + by, high80: interval.high80 + by };
}

/** Whether two numbers are printed and spoken alike, so that nothing has to be drawn again. */
export function isPrintedAlike(one: FormattedQuantity | null, other: FormattedQuantity | null): boolean {
  if (one === null || other === null) return one === other;
  return one.text === other.text && one.interval === other.interval && one.spoken === other.spoken;
}
