import {
  QUANTITIES,
  QUANTITY_IDS,
  type Ambient,
  type Equipment,
  type Interval,
  type Intervals,
  type Ledger,
  type QuantityId,
  type Recipe,
  STATIONS,
} from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { formatDifference } from "@/lib/ui/format-difference";
import type { LedgerColumn, LedgerGroup, LedgerRow } from "@/lib/ui/ledger-rows";

interface Side {
  readonly recipe: Recipe;
  readonly equipment: Equipment;
  readonly ambient: Ambient;
  readonly ledger: Ledger;
}

/** Two ledgers, the intervals of their numbers, and those of their differences. */
export interface ComparedLedgersOf {
  readonly one: Side;
  readonly other: Side;
  readonly before: Intervals;
  readonly after: Intervals;
  readonly apart: Intervals;
}

export function differenceColumns(before: string, after: string): readonly LedgerColumn[] {
  return [
    { id: "before", label: before },
    { id: "after", label: after },
    { id: "difference", label: "Difference" },
  ];
}

/** Only the rows that differ: of what is the same, nobody asked. */
export function differenceGroups(compared: ComparedLedgersOf, preferences: Preferences): readonly LedgerGroup[] {
  return STATIONS.map((station) => ({
    station,
    rows: QUANTITY_IDS.filter((id) => QUANTITIES[id].station === station && differs(compared, id)).map((id) =>
      toRow(compared, id, preferences),
    ),
  })).filter(({ rows }) => rows.length > 0);
}

/** Differences below this share of a value are rounding. */
const ROUNDING = 1e-9;

function differs({ one, other }: ComparedLedgersOf, id: QuantityId): boolean {
  const [from, to] = [one.ledger.quantities[id], other.ledger.quantities[id]];
  if (from === null || to === null) return from !== to;
  return Math.abs(to - from) > ROUNDING * Math.max(Math.abs(to), Math.abs(from));
}

function toRow(
  { one, other, before, after, apart }: ComparedLedgersOf,
  id: QuantityId,
  preferences: Preferences,
): LedgerRow {
  const { label, dimension } = QUANTITIES[id];
  const [from, to] = [one.ledger.quantities[id], other.ledger.quantities[id]];
  const interval = apart[id];
  return {
    id,
    label,
    dimension,
    note: interval === undefined || from === null ? undefined : intervalInWords({ id, from, interval, preferences }),
    cells: [
      { value: from, interval: before[id] },
      { value: to, interval: after[id] },
      { value: from === null ? null : to, differenceFrom: from ?? undefined, reason: "only one of the two has it" },
    ],
  };
}

/** The 80 % interval of a difference, in the reader's unit; "surely" where it does not reach nothing. */
export function intervalInWords(a: {
  readonly id: QuantityId;
  readonly from: number;
  readonly interval: Interval;
  readonly preferences: Preferences;
}): string {
  const { from, preferences } = a;
  const { dimension } = QUANTITIES[a.id];
  const [low, high] = [a.interval.low80, a.interval.high80].map((apart) =>
    formatDifference({ value: from + apart, from, dimension, preferences }),
  );
  if (low === undefined || high === undefined || low.text === high.text) return "";
  return `difference ${low.text} to ${high.text} ${high.unit}, four times out of five`;
}
