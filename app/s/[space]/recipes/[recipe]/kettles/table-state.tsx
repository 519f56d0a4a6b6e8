"use client";

import type { KettleSnapshot } from "@/lib/ui/kettles/kettle-store";
import { MOST_PLAIN_ROWS } from "@/lib/ui/kettles/kettle-table";
import { viewQuery, type KettleView } from "@/lib/ui/kettles/kettle-view";
import { isComputed } from "@/lib/ui/kettles/shown-rows";
import { Notice } from "@/lib/ui/notice";

const COUNT = new Intl.NumberFormat("en-GB");

interface TableStateProps {
  readonly view: KettleView;
  readonly snapshot: KettleSnapshot;
  readonly isComplete: boolean;
  readonly isHydrated: boolean;
  readonly shownCount: number;
  readonly home: string;
  readonly onView: (view: KettleView) => void;
  readonly onRetry: () => void;
}

/** How many rows there are and how many are computed, and the table in other forms. */
export function TableState(props: TableStateProps) {
  const { view, snapshot, isComplete, shownCount, home, onView, onRetry } = props;
  const { rowCount, state } = snapshot;
  return (
    <div className="no-print mb-3 flex flex-wrap items-center justify-between gap-x-6 gap-y-1">
      <div className="kettle-progress">
        <p>{isComplete ? `${COUNT.format(shownCount)} of ${COUNT.format(rowCount)} rows` : progress(props)}</p>
        <p role="status" className="sr-only">
          {isComplete ? "All kettles are computed" : ""}
        </p>
      </div>
      {state === "failed" ? (
        <Notice kind="attention" live>
          Not every kettle could be read and computed.{" "}
          <button type="button" className="button-link" onClick={onRetry}>
            Try again
          </button>
        </Notice>
      ) : null}
      <p className="flex flex-wrap gap-x-6">
        {rowCount > MOST_PLAIN_ROWS ? (
          <a
            className="target"
            href={`${home}/kettles${viewQuery({ ...view, isPlain: !view.isPlain })}`}
            onClick={(event) => {
              event.preventDefault();
              onView({ ...view, isPlain: !view.isPlain });
            }}
          >
            {view.isPlain ? "Show as a quick table" : "Show as a plain table"}
          </a>
        ) : null}
        <a className="target" href={`${home}/kettles/csv${viewQuery(view)}`} download>
          Table as CSV
        </a>
      </p>
    </div>
  );
}

function progress({ view, snapshot, isHydrated }: TableStateProps): string {
  const { computed, kettleCount, entries, rowCount } = snapshot;
  if (!isHydrated && entries.length < rowCount) {
    return `The first ${COUNT.format(entries.length)} of ${COUNT.format(rowCount)} rows; the table as CSV has all of them.`;
  }
  const done = `${COUNT.format(computed)} of ${COUNT.format(kettleCount)} computed`;
  return isComputed(view.sort) ? `${done}; put in order when all are` : done;
}
