"use client";

import { useId, type MouseEvent, type ReactElement } from "react";
import { flushSync } from "react-dom";
import type { FieldErrors } from "@/lib/model/field-errors";
import { fieldIds } from "../field-ids";
import { fieldUnit } from "../read-field";
import { rowField, type Draft, type RowList } from "./draft";
import { useEditor } from "./editor-context";
import { unitId } from "./row-cell";
import { RowEditor } from "./row-editor";
import { columnHeading, ROW_LAYOUTS } from "./row-layout";

/** The rows that go in at one place: grist, hops, mash steps. */
export interface IngredientRowsProps {
  readonly list: RowList;
  readonly draft: Draft;
  readonly problems: FieldErrors;
  /** What the ledger gives back, by list and row. */
  readonly results: ReadonlyMap<string, number>;
}

export function IngredientRows({ list, draft, problems, results }: IngredientRowsProps): ReactElement | null {
  const { isReadOnly } = useEditor();
  const headingId = useId();
  const rows = draft.rows[list];
  const layout = ROW_LAYOUTS[list];
  if (isReadOnly && rows.length === 0) return null;
  return (
    <section aria-labelledby={headingId} id={fieldIds(list).control}>
      <h3 id={headingId} className="text-base">
        {layout.heading}
      </h3>
      {rows.length === 0 ? null : <Headings list={list} />}
      <ol>
        {rows.map((row, index) => (
          <RowEditor
            key={row.key}
            list={list}
            row={row}
            index={index}
            count={rows.length}
            problems={problemsOf(problems, `${list}.${row.key}.`)}
            result={results.get(`${list}.${row.key}`) ?? null}
          />
        ))}
      </ol>
      {problems[list] === undefined ? null : <p className="field-error">{problems[list]}</p>}
      {isReadOnly ? null : <AddButton list={list} words={layout.addWords} />}
    </section>
  );
}

/** Only this row's messages; undefined when it has none, so that the row stays as it was drawn. */
function problemsOf(problems: FieldErrors, stem: string): FieldErrors | undefined {
  const own = Object.entries(problems).filter(([name]) => name.startsWith(stem));
  return own.length === 0 ? undefined : Object.fromEntries(own);
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
