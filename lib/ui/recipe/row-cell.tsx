"use client";

import { useState, type ReactElement } from "react";
import type { MeasuredField } from "@/lib/model/field";
import { amountEcho } from "../amount-echo";
import { fieldIds, type FieldIds } from "../field-ids";
import { fieldUnit } from "../read-field";
import { cellName, rowField, type Column, type RowList } from "./draft";
import { useEditor } from "./editor-context";
import type { Entry } from "./entry";
import { fillFromName } from "./fill-from-name";
import { KindSelect } from "./kind-select";
import { cellLabel } from "./row-labels";
import { columnHeading, ROW_LAYOUTS } from "./row-layout";
import { unitBeside } from "./unit-beside";
import { useCell, useProblem } from "./use-row-value";

/** One cell of an ingredient row: a text, a number or a kind. */
export interface RowCellProps {
  readonly list: RowList;
  readonly rowKey: string;
  /** How the row is spoken of. */
  readonly rowName: string;
  readonly column: Column;
}

export function RowCell(props: RowCellProps): ReactElement {
  const { list, rowKey, rowName, column } = props;
  const { preferences, isReadOnly } = useEditor();
  const entry = useCell(list, rowKey, column);
  const { text } = entry;
  const field = rowField(list, column);
  const unit = field === null ? "" : fieldUnit(field, preferences);
  const heading = columnHeading(list, column);
  return (
    <div className={column === "name" ? "col-span-3 min-w-0 md:col-span-1" : "min-w-0"}>
      <span aria-hidden className="text-sm text-muted md:hidden">
        {unit === "" ? heading : `${heading}, ${unit}`}
      </span>
      {isReadOnly ? (
        <span className={field === null ? "block" : "block md:text-end"}>
          <span className="sr-only">{cellLabel(rowName, column)}: </span>
          {text === "" ? "—" : text}
          {text === "" ? null : <span className="quantity-unit md:hidden">{unitBeside(text, unit)}</span>}
        </span>
      ) : (
        <Control {...props} entry={entry} field={field} unit={unit} />
      )}
    </div>
  );
}

interface ControlProps extends RowCellProps {
  readonly entry: Entry;
  readonly field: MeasuredField | null;
  readonly unit: string;
}

function Control({ list, rowKey, rowName, column, entry, field, unit }: ControlProps): ReactElement {
  const { preferences } = useEditor();
  const [isFocused, setFocused] = useState(false);
  const type = useTyping({ list, rowKey, column });
  const name = cellName(list, rowKey, column);
  const error = useProblem(name);
  const ids = fieldIds(name);
  const hasHeading = ROW_LAYOUTS[list].columns.includes(column);
  const named = cellLabel(rowName, column);
  // What stands in no column of its list tells its unit itself.
  const label = hasHeading || unit === "" ? named : `${named}, ${unit}`;
  if (column === "kind")
    return <KindSelect list={list} id={ids.control} label={label} kind={entry.text} onChange={type} />;
  const shownError = isFocused ? undefined : error;
  const echo = field === null ? null : amountEcho({ text: entry.text, field, preferences });
  const note = entry.solvedFor ?? echo;
  const described = [
    unit === "" || !hasHeading ? "" : unitId(list, column),
    note === null ? "" : ids.hint,
    shownError === undefined ? "" : ids.error,
  ].filter(Boolean);
  return (
    <>
      <input
        id={ids.control}
        name={name}
        type="text"
        className={field === null ? "input" : "input text-end"}
        inputMode={field === null || field.min < 0 ? "text" : "decimal"}
        list={column === "name" ? datalistOf(list) : undefined}
        aria-label={label}
        aria-describedby={described.length === 0 ? undefined : described.join(" ")}
        aria-invalid={shownError !== undefined}
        autoComplete="off"
        maxLength={80}
        value={entry.text}
        onChange={(event) => type(event.target.value)}
        onFocus={(event) => {
          setFocused(true);
          event.target.select();
        }}
        onBlur={() => setFocused(false)}
      />
      <Below ids={ids} note={note} error={shownError} />
    </>
  );
}

/** What an amount comes to, or was solved for; and what is wrong with it. */
function Below(props: {
  readonly ids: FieldIds;
  readonly note: string | null;
  readonly error: string | undefined;
}): ReactElement {
  const { ids, note, error } = props;
  return (
    <>
      {note === null ? null : (
        <span id={ids.hint} className="block text-end text-sm text-muted">
          {note}
        </span>
      )}
      {error === undefined ? null : (
        <span id={ids.error} className="field-error text-sm">
          {error}
        </span>
      )}
    </>
  );
}

/** Types into a cell; a name from the lists brings its figures with it. */
function useTyping(at: Pick<RowCellProps, "list" | "rowKey" | "column">): (written: string) => void {
  const { list, rowKey, column } = at;
  const { dispatch, preferences, reference } = useEditor();
  return (written) => {
    dispatch({ type: "type in row", list, row: rowKey, column, text: written });
    if (column !== "name" || reference === null) return;
    const entries = fillFromName({ list, name: written, reference, preferences });
    if (entries !== null) dispatch({ type: "fill row", list, row: rowKey, entries });
  };
}

function datalistOf(list: RowList): string {
  return list === "mashGrist" || list === "kettleGrist" ? `typical-${list}` : "hop-varieties";
}

/** The hidden text that tells a cell's unit. */
export function unitId(list: RowList, column: Column): string {
  return `unit-${list}-${column}`;
}
