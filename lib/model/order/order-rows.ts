import type { CsvCell } from "../csv";
import { majorText } from "../price";
import type { Order } from "./order";

const HEADINGS = [
  "Kind",
  "Item",
  "Unit",
  "Member",
  "Needed by sheets",
  "On hand",
  "Wanted beside",
  "Left over taken",
  "To buy",
  "Packs bought",
  "Cost",
  "Currency",
  "Allotted",
  "Weighed out",
  "Weighed by",
  "Weighed at",
] as const;

/** An order as a table with a line for each item and member. */
export function orderRows({ items, currency }: Pick<Order, "items" | "currency">): readonly (readonly CsvCell[])[] {
  const lines = items.flatMap(({ kind, name, unit, offers, purchase, shares }) => {
    const packs = offers
      .map(({ size }, i) => ({ size, count: purchase?.counts[i] ?? 0 }))
      .filter(({ count }) => count > 0)
      .map(({ size, count }) => `${String(count)} × ${String(size)} ${unit}`)
      .join(" + ");
    return shares.map((share): readonly CsvCell[] => [
      ...[kind, name, unit, share.userName, share.needed, share.onHand, share.wanted, share.extra, share.amount, packs],
      share.cost === null ? null : majorText(share.cost, currency),
      currency,
      share.allotted,
      share.handed?.amount ?? null,
      share.handed?.byName ?? null,
      share.handed?.at.toISOString() ?? null,
    ]);
  });
  return [HEADINGS, ...lines];
}

/** What each sheet needs of each item: the sums of an order, opened. */
export function sheetNeedRows({ items }: Pick<Order, "items">): readonly (readonly CsvCell[])[] {
  const lines = items.flatMap(({ kind, name, unit, shares }) =>
    shares.flatMap(({ userName, sources }) =>
      sources.map(({ label, amount }): readonly CsvCell[] => [kind, name, unit, userName, label, thousandth(amount)]),
    ),
  );
  return [["Kind", "Item", "Unit", "Member", "Sheet", "Needs"], ...lines];
}

/** Sheets are not rounded to what can be weighed; an order is. */
function thousandth(amount: number): number {
  return Math.round(amount * 1000) / 1000;
}
