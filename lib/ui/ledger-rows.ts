import type { ReactNode } from "react";
import type { Dimension, Interval, Station, StationBalance } from "@/lib/calc/ledger";

/**
 * What a ledger table is made of. Values are in the library's units; a column is whatever the screen compares: this
 * kettle, several kettles, or planned, measured and difference.
 */
export interface LedgerColumn {
  readonly id: string;
  readonly label: string;
}

export interface LedgerCell {
  /** null prints a dash with `reason`. */
  readonly value: number | null;
  readonly interval?: Interval | null | undefined;
  readonly reason?: string | undefined;
  /** Prints the signed distance of `value` from this one. */
  readonly differenceFrom?: number | undefined;
  readonly digits?: number | undefined;
  readonly attention?: boolean | undefined;
  /** Where the explanation is, on a screen without `onExplain`. */
  readonly href?: string | undefined;
  /** Stands in the cell instead of the value: a number that follows by itself. */
  readonly content?: ReactNode;
}

export interface LedgerRow {
  /** A quantity of the ledger, or any other id that `onExplain` understands. */
  readonly id: string;
  readonly label: string;
  readonly dimension: Dimension;
  /** In the order of the columns. */
  readonly cells: readonly LedgerCell[];
  /** A short text under the label. */
  readonly note?: string | undefined;
  /** Whatever belongs to the row and needs the whole width, such as the ingredients that go in here. */
  readonly children?: ReactNode;
}

export interface LedgerGroup {
  readonly station: Station;
  readonly rows: readonly LedgerRow[];
  /** Stands under the station's heading: the ingredients or settings that go in here. */
  readonly children?: ReactNode;
  /** In = lost + out, of the one ledger shown; leave it out where columns are several ledgers. */
  readonly balance?: StationBalance | undefined;
  /** The same as something that follows by itself. */
  readonly balanceContent?: ReactNode;
}
