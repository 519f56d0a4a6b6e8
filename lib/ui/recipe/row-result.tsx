"use client";

import { useCallback, type ReactElement } from "react";
import { formatQuantity } from "../format-quantity";
import { useEditor } from "./editor-context";
import type { EditorState } from "./editor-state";
import { isPrintedAlike } from "./shown";
import { useEditorValue } from "./use-editor-value";

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
    ({ shown: of }: EditorState) => {
      const value = of?.results.get(id);
      return value === undefined ? null : formatQuantity({ value, dimension, preferences });
    },
    [id, dimension, preferences],
  );
  const shown = useEditorValue(select, isPrintedAlike);
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
