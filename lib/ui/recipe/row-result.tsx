"use client";

import { useCallback, type ReactElement } from "react";
import { formatQuantity } from "../format-quantity";
import { useEditor } from "./editor-context";
import { isPrintedAlike, type Shown } from "./shown";
import { useShownValue } from "./use-shown-value";

/** What the ledger gives back for one row; it opens its explanation. */
export function RowResult(props: {
  readonly id: string;
  readonly name: string;
  readonly kind: "share" | "bitterness";
}): ReactElement {
  const { preferences, explain } = useEditor();
  const { id, name, kind } = props;
  const words = kind === "share" ? "Share of the extract" : "Bitterness";
  const dimension = kind === "share" ? "fraction" : "bitterness";
  const select = useCallback(
    (of: Shown | null) => {
      const value = of?.results.get(id);
      return value === undefined ? null : formatQuantity({ value, dimension, preferences });
    },
    [id, dimension, preferences],
  );
  const shown = useShownValue(select, isPrintedAlike);
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
