"use client";

import type { ReactElement } from "react";
import type { Preferences } from "@/lib/model/preferences";
import { Quantity } from "../quantity";
import { digitsOf, dimensionOf, NUMBER_COLUMNS, type NumberColumn } from "./kettle-columns";
import type { KettleFigures } from "./kettle-figures";

const LABELS = new Map(NUMBER_COLUMNS.map(({ id, label }) => [id, label]));

/** One number of a row with its 80 % interval; pressed, it explains itself. */
export interface NumberCellProps {
  readonly id: string;
  readonly column: NumberColumn;
  readonly figures: KettleFigures | null;
  readonly preferences: Preferences;
  readonly onExplain: ((id: string, column: NumberColumn) => void) | undefined;
}

export function NumberCell({ id, column, figures, preferences, onExplain }: NumberCellProps): ReactElement {
  const value = figures?.values[column] ?? null;
  const interval = figures?.intervals?.[column];
  const quantity = (
    <Quantity
      value={value}
      dimension={dimensionOf(column)}
      interval={interval}
      digits={digitsOf(column, preferences)}
      reason={figures === null ? "not computed yet" : "this kettle has no such value"}
      preferences={preferences}
    />
  );
  if (value === null || onExplain === undefined) return quantity;
  return (
    <button
      type="button"
      className="explained"
      aria-haspopup="dialog"
      onClick={() => {
        onExplain(id, column);
      }}
    >
      <span className="sr-only">{LABELS.get(column)}: </span>
      {quantity}
      <span className="sr-only">. Explain</span>
    </button>
  );
}
