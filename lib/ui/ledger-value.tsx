import Link from "next/link";
import type { ReactElement } from "react";
import type { Preferences } from "@/lib/model/preferences";
import type { LedgerCell, LedgerColumn, LedgerRow } from "./ledger-rows";
import { Quantity } from "./quantity";

/** One value of a ledger table; it leads to its explanation by a button, by a link, or not at all. */
export interface LedgerValueProps {
  readonly row: LedgerRow;
  readonly column: LedgerColumn;
  readonly cell: LedgerCell;
  readonly preferences: Preferences;
  readonly onExplain?: ((rowId: string, columnId: string) => void) | undefined;
}

export function LedgerValue({ row, column, cell, preferences, onExplain }: LedgerValueProps): ReactElement {
  const { href, content, ...shown } = cell;
  if (content !== undefined) return <>{content}</>;
  const quantity = <Quantity {...shown} dimension={row.dimension} preferences={preferences} aligned />;
  if (onExplain !== undefined && cell.value !== null) {
    return (
      <button
        type="button"
        className="explained"
        aria-haspopup="dialog"
        onClick={() => onExplain(row.id, column.id)}
        data-quantity={row.id}
      >
        <span className="sr-only">{row.label}: </span>
        {quantity}
        <span className="sr-only">. Explain</span>
      </button>
    );
  }
  if (href !== undefined) {
    return (
      <Link href={href} className="explained" data-quantity={row.id}>
        <span className="sr-only">{row.label}: </span>
        {quantity}
      </Link>
    );
  }
  return quantity;
}
