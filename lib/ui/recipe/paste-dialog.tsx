"use client";

import { useEffect, useMemo, useRef, useState, type ReactElement } from "react";
import { DataTable } from "../data-table";
import { useEditor } from "./editor-context";
import type { RowList } from "./draft";
import { readPasted, withPasted, type PastedLine } from "./paste-rows";
import { ROW_LAYOUTS } from "./row-layout";
import { rowNoun } from "./row-labels";

export interface PasteDialogProps {
  readonly list: RowList;
  readonly text: string;
  readonly onClose: () => void;
}

/** Rows from a spreadsheet: what was understood of them, line by line, before they are put in. */
export function PasteDialog({ list, onClose, text: first }: PasteDialogProps): ReactElement {
  const { dispatch, preferences, reference } = useEditor();
  const dialog = useRef<HTMLDialogElement>(null);
  const [text, setText] = useState(first);
  const pasted = useMemo(
    () => readPasted(text, { list, preferences, reference }),
    [text, list, preferences, reference],
  );
  const usable = pasted.lines.filter(({ cells }) => cells !== null);
  useEffect(() => dialog.current?.showModal(), []);

  function put(): void {
    const words = `${String(usable.length)} pasted rows`;
    dispatch({ type: "put", words, change: (draft, makeKey) => withPasted(draft, list, usable, makeKey) });
    dialog.current?.close();
  }

  const { heading, columns } = ROW_LAYOUTS[list];
  return (
    <dialog ref={dialog} className="sheet-dialog" aria-label={`Paste rows: ${heading}`} onClose={onClose}>
      <h2>Paste rows: {heading}</h2>
      <label className="field-label mt-3 block" htmlFor="pasted-rows">
        Rows copied from a spreadsheet, with headings or without
      </label>
      <textarea
        id="pasted-rows"
        className="input font-mono"
        rows={6}
        value={text}
        onChange={(event) => setText(event.target.value)}
      />
      <p className="text-sm text-muted">
        Without headings the order is that of the screen: {columns.length} columns of a {rowNoun(list)}. Units may stand
        in the cells or in the headings; a comma is as good as a point.
      </p>
      {text.trim() === "" ? null : <Preview lines={pasted.lines} />}
      {pasted.unused.length === 0 || text.trim() === "" ? null : <p>Not used: {pasted.unused.join(", ")}.</p>}
      <p className="mt-4 flex flex-wrap gap-3">
        <button type="button" className="button" disabled={usable.length === 0} onClick={put}>
          {usable.length === 1 ? "Add 1 row" : `Add ${String(usable.length)} rows`}
        </button>
        <button type="button" className="button button-quiet" onClick={() => dialog.current?.close()}>
          Cancel
        </button>
      </p>
    </dialog>
  );
}

function Preview({ lines }: { readonly lines: readonly PastedLine[] }): ReactElement {
  return (
    <DataTable
      caption="What was understood, line by line"
      columns={[
        { id: "number", label: "Line", isNumber: true, cell: ({ number }) => number },
        { id: "understood", label: "Understood", cell: ({ understood, cells }) => (cells === null ? "—" : understood) },
        {
          id: "problems",
          label: "Not understood, or missing",
          cell: ({ problems }) => problems.join("; ") || "nothing",
        },
      ]}
      records={lines}
      keyOf={({ number }) => String(number)}
    />
  );
}
