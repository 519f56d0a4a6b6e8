"use client";

import type { MouseEvent, ReactElement } from "react";
import type { RowList } from "./draft";
import { useEditor } from "./editor-context";
import { copyRow, removeRow } from "./row-acts";

/** Moves, copies and removes a row. */
export interface RowActionsProps {
  readonly list: RowList;
  readonly rowKey: string;
  readonly name: string;
  readonly index: number;
  readonly count: number;
  readonly move: (by: -1 | 1) => void;
}

export function RowActions({ list, rowKey, name, index, count, move }: RowActionsProps): ReactElement {
  const { dispatch } = useEditor();

  const at = (event: MouseEvent<HTMLButtonElement>) => ({
    dispatch,
    list,
    rowKey,
    item: event.currentTarget.closest("li"),
  });

  return (
    <div role="group" aria-label={`Row of ${name}`} className="no-print col-span-2 flex md:col-span-1 md:justify-end">
      <MoveButton words={`Move ${name} up`} arrow="↑" isAtEnd={index === 0} onClick={() => move(-1)} />
      <MoveButton words={`Move ${name} down`} arrow="↓" isAtEnd={index === count - 1} onClick={() => move(1)} />
      <button
        type="button"
        className="row-button text-sm underline underline-offset-4"
        onClick={(event) => copyRow(at(event))}
      >
        Copy<span className="sr-only"> {name}</span>
      </button>
      <button
        type="button"
        className="row-button text-sm underline underline-offset-4"
        onClick={(event) => removeRow({ ...at(event), name })}
      >
        Remove<span className="sr-only"> {name}</span>
      </button>
    </div>
  );
}

function MoveButton(props: {
  readonly words: string;
  readonly arrow: string;
  readonly isAtEnd: boolean;
  readonly onClick: () => void;
}): ReactElement {
  const { words, arrow, isAtEnd, onClick } = props;
  return (
    <button
      type="button"
      className={isAtEnd ? "row-button cursor-default text-line" : "row-button"}
      aria-disabled={isAtEnd}
      aria-label={words}
      title={words}
      onClick={isAtEnd ? undefined : onClick}
    >
      {arrow}
    </button>
  );
}
