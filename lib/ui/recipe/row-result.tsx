"use client";

import type { ReactElement } from "react";
import { formatQuantity } from "../format-quantity";
import { useEditor } from "./editor-context";

/** What the ledger gives back for one row; it opens its explanation. */
export function RowResult(props: {
  readonly id: string;
  readonly name: string;
  readonly kind: "share" | "bitterness";
  readonly value: number | null;
}): ReactElement {
  const { preferences, explain } = useEditor();
  const { id, name, kind, value } = props;
  const words = kind === "share" ? "Share of the extract" : "Bitterness";
  const dimension = kind === "share" ? "fraction" : "bitterness";
  const shown = value === null ? null : formatQuantity({ value, dimension, preferences });
  return (
    <div className="flex min-h-11 flex-col md:min-h-0 md:items-end">
      <span aria-hidden className="text-sm text-muted md:hidden">
        {kind === "share" ? "Of the extract" : "Gives"}
      </span>
      <output aria-live="off" aria-label={`${words} from ${name}`} className="whitespace-nowrap">
        {shown === null ? (
          "—"
        ) : (
          <button type="button" className="explained row-button" aria-haspopup="dialog" onClick={() => explain(id)}>
            <span>
              <span className="quantity-whole">{shown.text}</span>
              <span className="quantity-unit">{` ${shown.unit}`}</span>
            </span>
            <span className="sr-only">. Explain</span>
          </button>
        )}
      </output>
    </div>
  );
}
