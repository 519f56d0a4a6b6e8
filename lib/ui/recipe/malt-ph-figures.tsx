"use client";

import { useState, type ReactElement } from "react";
import { fieldUnit } from "../read-field";
import { rowField, type Column } from "./draft";
import { useEditor } from "./editor-context";
import { RowCell } from "./row-cell";
import { COLUMN_LABELS } from "./row-labels";
import type { EditorState } from "./editor-state";
import { useEditorValue } from "./use-editor-value";
import { useRowName } from "./use-row-value";

const COLUMNS: readonly Column[] = ["distilledWaterPh", "buffering", "lacticFraction"];

/** How each malt moves the pH of the mash: folded away, since the lists and the colour give it to most. */
export function MaltPhFigures(): ReactElement | null {
  const [isOpen, setOpen] = useState(false);
  const keys = useEditorValue(mashedKeys);
  if (keys === "") return null;
  return (
    <details onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary className="cursor-pointer py-2 text-sm">How the malts move the pH of the mash</summary>
      {isOpen ? (
        <>
          <p className="text-sm text-muted">
            As a maltster or a titration gives it, all three or none: empty, it is guessed from kind and colour.
          </p>
          <Headings />
          {keys.split(" ").map((key) => (
            <MaltPhRow key={key} rowKey={key} />
          ))}
        </>
      ) : null}
    </details>
  );
}

const GRID = "grid grid-cols-3 gap-x-2 md:grid-cols-[minmax(8rem,1fr)_8rem_8rem_8rem]";

function Headings(): ReactElement {
  const { preferences } = useEditor();
  return (
    <div aria-hidden className={`${GRID} hidden text-sm text-muted md:grid`}>
      <span>Name</span>
      {COLUMNS.map((column) => {
        const field = rowField("mashGrist", column);
        return (
          <span key={column} className="text-end">
            {COLUMN_LABELS[column]}, {field === null ? "" : fieldUnit(field, preferences)}
          </span>
        );
      })}
    </div>
  );
}

function MaltPhRow({ rowKey }: { readonly rowKey: string }): ReactElement {
  const name = useRowName("mashGrist", rowKey);
  return (
    <div className={`${GRID} items-center py-0.5`}>
      <span className="col-span-3 md:col-span-1">{name}</span>
      {COLUMNS.map((column) => (
        <RowCell key={column} list="mashGrist" rowKey={rowKey} rowName={name} column={column} />
      ))}
    </div>
  );
}

function mashedKeys({ draft }: EditorState): string {
  return draft.rows.mashGrist.map(({ key }) => key).join(" ");
}
