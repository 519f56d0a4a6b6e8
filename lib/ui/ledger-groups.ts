import type { ReactNode } from "react";
import {
  QUANTITIES,
  QUANTITY_IDS,
  STATIONS,
  type Interval,
  type QuantityId,
  type Station,
  type StationBalance,
} from "@/lib/calc/ledger";
import type { LedgerCell, LedgerGroup } from "./ledger-rows";

/** One column of numbers: a ledger's quantities, with intervals where they are predictions. */
export interface LedgerNumbers {
  readonly quantities: Readonly<Partial<Record<QuantityId, number | null>>>;
  readonly intervals?: Readonly<Partial<Record<QuantityId, Interval>>> | undefined;
  /** Why a number is missing, by quantity. */
  readonly reasons?: Readonly<Partial<Record<QuantityId, string>>> | undefined;
}

/**
 * Lays one or several ledgers out as the groups of a ledger table, in the order of the process. Rows in which no column
 * has a number or a reason are left out.
 */
export function ledgerGroups(a: {
  readonly columns: readonly LedgerNumbers[];
  /** Only these quantities; all of them when left out. */
  readonly only?: ReadonlySet<QuantityId> | undefined;
  readonly balances?: readonly StationBalance[] | undefined;
  readonly children?: Readonly<Partial<Record<Station, ReactNode>>> | undefined;
}): readonly LedgerGroup[] {
  const ids = QUANTITY_IDS.filter((id) => a.only?.has(id) ?? true);
  return STATIONS.map((station) => ({
    station,
    children: a.children?.[station],
    balance: a.balances?.find((balance) => balance.station === station),
    rows: ids
      .filter((id) => QUANTITIES[id].station === station && a.columns.some((column) => saysSomething(column, id)))
      .map((id) => ({
        id,
        label: QUANTITIES[id].label,
        dimension: QUANTITIES[id].dimension,
        cells: a.columns.map((column) => cellOf(column, id)),
      })),
  })).filter((group) => group.rows.length > 0 || group.children !== undefined || group.balance !== undefined);
}

function saysSomething({ quantities, reasons }: LedgerNumbers, id: QuantityId): boolean {
  return (quantities[id] ?? null) !== null || reasons?.[id] !== undefined;
}

function cellOf({ quantities, intervals, reasons }: LedgerNumbers, id: QuantityId): LedgerCell {
  return { value: quantities[id] ?? null, interval: intervals?.[id], reason: reasons?.[id] };
}
