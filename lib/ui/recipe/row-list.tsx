"use client";

import { useCallback, useId, useState, type ClipboardEvent, type MouseEvent, type ReactElement } from "react";
import { flushSync } from "react-dom";
import { fieldIds } from "../field-ids";
import { fieldUnit } from "../read-field";
import { rowField, type RowList } from "./draft";
import { useEditor } from "./editor-context";
import type { EditorState } from "./editor-state";
import { PasteDialog } from "./paste-dialog";
import { unitId } from "./row-cell";
import { RowEditor } from "./row-editor";
import { columnHeading, ROW_LAYOUTS } from "./row-layout";
import { useEditorValue } from "./use-editor-value";

/** The rows that go in at one place: grist, hops, mash steps. */
export function IngredientRows({ list }: { readonly list: RowList }): ReactElement | null {
  const { isReadOnly } = useEditor();
  const headingId = useId();
  const keys = useEditorValue(useCallback(({ draft }: EditorState) => keysOf(draft.rows[list]), [list]));
  const problem = useEditorValue(useCallback(({ reading }: EditorState) => reading.problems[list], [list]));
  const [pasting, setPasting] = useState<string | null>(null);
  const rows = keys === "" ? [] : keys.split(" ");
  const layout = ROW_LAYOUTS[list];
  if (isReadOnly && rows.length === 0) return null;
  return (
    <section
      aria-labelledby={headingId}
      id={fieldIds(list).control}
      onPaste={isReadOnly || pasting !== null ? undefined : (event) => takeTable(event, setPasting)}
    >
      <h3 id={headingId} className="text-base">
        {layout.heading}
      </h3>
      {rows.length === 0 ? null : <Headings list={list} />}
      <ol>
        {rows.map((key, index) => (
          <RowEditor key={key} list={list} rowKey={key} index={index} count={rows.length} />
        ))}
      </ol>
      {problem === undefined ? null : <p className="field-error">{problem}</p>}
      {isReadOnly ? null : (
        <p className="no-print flex flex-wrap gap-x-4">
          <AddButton list={list} words={layout.addWords} />
          <button type="button" className="button-link" onClick={() => setPasting("")}>
            Paste rows<span className="sr-only">: {layout.heading}</span>
          </button>
        </p>
      )}
      {pasting === null ? null : <PasteDialog list={list} text={pasting} onClose={() => setPasting(null)} />}
    </section>
  );
}

/** A table that is pasted into a cell is meant for the list. */
function takeTable(event: ClipboardEvent<HTMLElement>, open: (text: string) => void): void {
  const text = event.clipboardData.getData("text/plain");
  if (!/[\t\n]/.test(text.trim())) return;
  event.preventDefault();
  open(text);
}

/** As one text, which is the same as long as no row comes, goes or moves. */
function keysOf(rows: EditorState["draft"]["rows"][RowList]): string {
  return rows.map(({ key }) => key).join(" ");
}

function Headings({ list }: { readonly list: RowList }): ReactElement {
  const { preferences } = useEditor();
  const layout = ROW_LAYOUTS[list];
  return (
    <div aria-hidden className={`hidden gap-x-2 text-sm text-muted md:grid ${layout.grid}`}>
      {layout.columns.map((column) => {
        const field = rowField(list, column);
        const unit = field === null ? "" : fieldUnit(field, preferences);
        return (
          <span key={column} className={field === null ? "" : "text-end"}>
            {columnHeading(list, column)}
            {unit === "" ? null : <span id={unitId(list, column)}>, {unit}</span>}
          </span>
        );
      })}
      {layout.result === null ? null : (
        <span className="text-end">{layout.result === "share" ? "Share" : "Gives"}</span>
      )}
    </div>
  );
}

function AddButton({ list, words }: { readonly list: RowList; readonly words: string }): ReactElement {
  const { dispatch } = useEditor();

  function add(event: MouseEvent<HTMLButtonElement>): void {
    const section = event.currentTarget.closest("section");
    flushSync(() => dispatch({ type: "add row", list, below: null }));
    section?.querySelector<HTMLElement>("li:last-child input")?.focus();
  }

  return (
    <button type="button" data-add className="button-link no-print" onClick={add}>
      {words}
    </button>
  );
}
