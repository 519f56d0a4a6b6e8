"use client";

import type { ReactElement } from "react";
import { KettleHead, type KettleHeadProps } from "./kettle-head";
import { KettleLine, type KettleLinesProps } from "./kettle-line";
import { VirtualLines } from "./virtual-lines";

/** A table of more rows than this draws those in view only; a phone draws this many within a blink. */
export const MOST_PLAIN_ROWS = 300;

/**
 * The recipe on every kettle of the space, a row each.
 *
 * - `isWhole` draws every row, however many: for paper, and for whoever asks.
 */
export interface KettleTableProps extends KettleLinesProps, KettleHeadProps {
  readonly isWhole: boolean;
}

export function KettleTable({ view, home, onView, isWhole, ...lines }: KettleTableProps): ReactElement {
  const isVirtual = !isWhole && lines.questions !== null && lines.rows.length > MOST_PLAIN_ROWS;
  return (
    <table
      role="table"
      className="data-table kettle-table"
      aria-rowcount={isVirtual ? lines.rows.length + 1 : undefined}
    >
      <caption className="sr-only">The recipe on every kettle; a name leads to that kettle’s own sheet</caption>
      <KettleHead view={view} home={home} onView={onView} />
      {isVirtual ? <VirtualLines {...lines} /> : <PlainLines {...lines} />}
    </table>
  );
}

function PlainLines({ rows, sheetHref, preferences, questions }: KettleLinesProps): ReactElement {
  return (
    <tbody role="rowgroup">
      {rows.map(({ entry, figures }) => (
        <KettleLine
          key={entry.key}
          entry={entry}
          figures={figures}
          sheetHref={sheetHref(entry)}
          preferences={preferences}
          questions={questions}
        />
      ))}
    </tbody>
  );
}
