"use client";

import Link from "next/link";
import { memo, type ReactElement } from "react";
import type { KettleEntry } from "@/lib/model/kettle-entry";
import type { Preferences } from "@/lib/model/preferences";
import { FitCell } from "./fit-cell";
import { NUMBER_COLUMNS, type NumberColumn } from "./kettle-columns";
import type { KettleFigures } from "./kettle-figures";
import { NumberCell } from "./number-cell";
import type { KettleRow } from "./shown-rows";

/** What a row can be asked; absent before the page has its scripts. */
export interface RowQuestions {
  readonly explain: (id: string, column: NumberColumn) => void;
  readonly openFit: (id: string) => void;
}

/** All the rows of the table. */
export interface KettleLinesProps {
  readonly rows: readonly KettleRow[];
  readonly sheetHref: (entry: KettleEntry) => string;
  readonly preferences: Preferences;
  /** null before the page has its scripts. */
  readonly questions: RowQuestions | null;
  /** Told which rows are in view, where not all are drawn. */
  readonly onLook: (ids: readonly string[]) => void;
}

/**
 * One row: a kettle, or a member without one.
 *
 * - `rowIndex` its place in the whole table, where not all rows are there; `measure` tells a virtual table its height.
 */
export interface KettleLineProps {
  readonly entry: KettleEntry;
  readonly figures: KettleFigures | null;
  readonly sheetHref: string;
  readonly preferences: Preferences;
  readonly questions: RowQuestions | null;
  readonly rowIndex?: number | undefined;
  readonly dataIndex?: number | undefined;
  readonly measure?: ((row: HTMLTableRowElement | null) => void) | undefined;
}

export const KettleLine = memo(function KettleLine(props: KettleLineProps): ReactElement {
  const { entry, figures, sheetHref, preferences, questions, rowIndex, dataIndex, measure } = props;
  const { key, kettleName, ownerName } = entry;
  return (
    <tr role="row" ref={measure} data-index={dataIndex} aria-rowindex={rowIndex}>
      <th role="rowheader" scope="row">
        {kettleName === null ? (
          <span className="text-muted">No kettle described yet</span>
        ) : (
          <Link href={sheetHref} className="kettle-name" prefetch={false}>
            {kettleName}
          </Link>
        )}
      </th>
      <td role="cell">{ownerName}</td>
      <td role="cell" className="kettle-fit">
        {kettleName === null ? null : (
          <FitCell id={key} figures={figures} preferences={preferences} onOpen={questions?.openFit} />
        )}
      </td>
      {NUMBER_COLUMNS.map(({ id, label }) => (
        <td role="cell" className="is-number" key={id}>
          {kettleName === null ? null : (
            <>
              <span aria-hidden className="narrow-label">
                {label}
              </span>
              <NumberCell
                id={key}
                column={id}
                figures={figures}
                preferences={preferences}
                onExplain={questions?.explain}
              />
            </>
          )}
        </td>
      ))}
    </tr>
  );
});
