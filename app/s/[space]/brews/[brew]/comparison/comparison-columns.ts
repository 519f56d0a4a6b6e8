import type { ComparedRow, LedgerComparison } from "@/lib/calc/compare";
import { QUANTITIES, QUANTITY_IDS, STATIONS, type QuantityId } from "@/lib/calc/ledger";
import { intervalOfSd } from "@/lib/ui/brew/interval-of-sd";
import type { LedgerCell, LedgerColumn, LedgerGroup, LedgerRow } from "@/lib/ui/ledger-rows";

/** Always in this order and these words. */
export const COMPARISON_COLUMNS = [
  { id: "planned", label: "Planned" },
  { id: "measured", label: "Measured" },
  { id: "difference", label: "Difference" },
] as const satisfies readonly LedgerColumn[];

/** What the balances make of the readings. */
export const RECONCILED_COLUMNS = [
  { id: "measured", label: "Measured" },
  { id: "reconciled", label: "Reconciled" },
  { id: "test", label: "Moved by" },
] as const satisfies readonly LedgerColumn[];

export type ComparisonColumn = (typeof COMPARISON_COLUMNS)[number]["id"] | "reconciled";

export function isComparisonColumn(id: string | undefined): id is ComparisonColumn {
  return id === "reconciled" || COMPARISON_COLUMNS.some((column) => column.id === id);
}

export function isQuantityId(id: string | undefined): id is QuantityId {
  return QUANTITY_IDS.some((each) => each === id);
}

/** The comparison as groups of the ledger table. */
export function comparisonGroups({ rows, suspects }: LedgerComparison): readonly LedgerGroup[] {
  const suspect = new Set<QuantityId>(suspects.map(({ quantity }) => quantity));
  return STATIONS.map((station) => ({
    station,
    rows: rows.filter((row) => row.station === station).map((row) => toRow(row, suspect.has(row.quantity))),
  })).filter(({ rows: ofStation }) => ofStation.length > 0);
}

function toRow(row: ComparedRow, isSuspect: boolean): LedgerRow {
  const { label, dimension } = QUANTITIES[row.quantity];
  return { id: row.quantity, label, dimension, note: noteOf(row, isSuspect), cells: cellsOf(row) };
}

function cellsOf(row: ComparedRow): LedgerRow["cells"] {
  const { planned, interval, measured, measuredSd, expectation, derived } = row;
  const reason = derived ? "needs readings that are not there" : "not measured";
  const difference: LedgerCell =
    measured === null
      ? { value: null, reason }
      : { value: measured, differenceFrom: planned, attention: expectation === "outside" };
  return [
    { value: planned, interval },
    { value: measured, interval: derived ? intervalOfSd(measured, measuredSd) : null, reason },
    difference,
  ];
}

/** Said in words, because colour alone says nothing to many. */
function noteOf({ expectation, derived, measured }: ComparedRow, isSuspect: boolean): string {
  const parts = [
    derived && measured !== null ? "from readings" : null,
    expectation === null ? "not measured" : `${expectation} the expectation`,
    isSuspect ? "cannot be right, see above" : null,
  ];
  return parts.filter((part) => part !== null).join(" · ");
}
