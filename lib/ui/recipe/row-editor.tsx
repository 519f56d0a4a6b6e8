"use client";

import { memo, type KeyboardEvent, type ReactElement } from "react";
import { flushSync } from "react-dom";
import type { RowList } from "./draft";
import { useEditor } from "./editor-context";
import { RowActions } from "./row-actions";
import { RowCell } from "./row-cell";
import { ROW_LAYOUTS } from "./row-layout";
import { copyRow, removeRow } from "./row-acts";
import { RowResult } from "./row-result";
import { useRowName } from "./use-row-value";

/** One ingredient or step: its cells, what the ledger makes of it, and its buttons. */
export interface RowEditorProps {
  readonly list: RowList;
  readonly rowKey: string;
  readonly index: number;
  readonly count: number;
}

export const RowEditor = memo(function RowEditor(props: RowEditorProps): ReactElement {
  const { list, rowKey, index, count } = props;
  const { isReadOnly, dispatch } = useEditor();
  const layout = ROW_LAYOUTS[list];
  const name = useRowName(list, rowKey);

  function move(by: -1 | 1): void {
    // Moving the row in the page takes the focus off it in some browsers.
    const focused = document.activeElement;
    flushSync(() => dispatch({ type: "move row", list, row: rowKey, by }));
    if (focused instanceof HTMLElement) focused.focus();
  }

  function addBelow(item: HTMLLIElement): void {
    flushSync(() => dispatch({ type: "add row", list, below: rowKey }));
    item.nextElementSibling?.querySelector("input")?.focus();
  }

  function onKeyDown(event: KeyboardEvent<HTMLLIElement>): void {
    const item = event.currentTarget;
    const isLastCell =
      event.target instanceof HTMLInputElement && event.target.name.endsWith(`.${layout.columns.at(-1) ?? ""}`);
    const act = rowAct(event, isLastCell);
    if (act === null) return;
    event.preventDefault();
    if (act === "up" || act === "down") move(act === "up" ? -1 : 1);
    if (act === "add") addBelow(item);
    if (act === "copy") copyRow({ dispatch, list, rowKey, item });
    if (act === "remove") removeRow({ dispatch, list, rowKey, name, item });
  }

  return (
    <li
      className={`grid max-w-none grid-cols-3 items-end md:items-center gap-x-2 gap-y-1 border-b border-rule py-2 md:border-0 md:py-0.5 ${layout.grid}`}
      onKeyDown={isReadOnly ? undefined : onKeyDown}
    >
      {layout.columns.map((column) => (
        <RowCell key={column} {...{ list, rowKey, column }} rowName={name} />
      ))}
      {layout.result === null ? null : <RowResult id={`${list}.${rowKey}`} name={name} kind={layout.result} />}
      {isReadOnly ? null : <RowActions {...{ list, rowKey, name, index, count, move }} />}
    </li>
  );
});

type RowAct = "up" | "down" | "add" | "copy" | "remove";

/** What a key does to the row that it was pressed in. */
function rowAct({ key, altKey, shiftKey }: KeyboardEvent, isLastCell: boolean): RowAct | null {
  if (key === "Enter") return altKey || isLastCell ? "add" : null;
  if (!altKey) return null;
  if (key === "ArrowDown") return shiftKey ? "copy" : "down";
  if (key === "ArrowUp") return shiftKey ? null : "up";
  return key === "Delete" ? "remove" : null;
}
