"use client";

import type { CsvRow } from "@/lib/model/cellar/csv/rows";
import { ClockTime } from "@/lib/ui/brew/clock-time";
import { DataTable, type DataColumn } from "@/lib/ui/data-table";

/** Of a long file the start is looked at, and every line that is wrong. */
const SHOWN = 20;
const WRONG_SHOWN = 20;

interface CsvPreviewProps {
  readonly rows: readonly CsvRow[];
  readonly isTaking: boolean;
  readonly take: (leaveOut: boolean) => Promise<void>;
}

const COLUMNS: readonly DataColumn<CsvRow>[] = [
  { id: "line", label: "Line", cell: ({ line }) => String(line) },
  { id: "at", label: "Time, where you are", cell: (row) => (row.ok ? <ClockTime at={row.at} withDay /> : "—") },
  {
    id: "reading",
    label: "What is taken",
    cell: (row) =>
      row.ok ? (
        row.readings.map(({ entered }) => entered).join("; ")
      ) : (
        <span className="quantity-attention">{row.message}</span>
      ),
  },
];

/** What would be taken, line by line, before anything is. */
export function CsvPreview({ rows, isTaking, take }: CsvPreviewProps) {
  const wrong = rows.filter((row) => !row.ok);
  const right = rows.filter((row) => row.ok);
  const shown = [...right.slice(0, SHOWN), ...wrong.slice(0, WRONG_SHOWN)].sort((a, b) => a.line - b.line);
  return (
    <>
      <p role="status">
        {String(right.length)} {right.length === 1 ? "line" : "lines"} can be taken, {String(wrong.length)} cannot be
        read.
        {shown.length < rows.length ? ` The first ${String(SHOWN)} of each are shown.` : ""}
      </p>
      <DataTable
        caption="Lines of the file"
        captionHidden
        columns={COLUMNS}
        records={shown}
        keyOf={({ line }) => String(line)}
      />
      <div className="flex flex-wrap gap-3">
        <button
          type="button"
          className={wrong.length === 0 ? "button" : "button button-quiet"}
          aria-disabled={isTaking || right.length === 0}
          onClick={() => {
            if (!isTaking && right.length > 0) void take(wrong.length > 0);
          }}
        >
          {isTaking ? "Taking…" : takeWords(right.length, wrong.length)}
        </button>
      </div>
    </>
  );
}

function takeWords(right: number, wrong: number): string {
  const lines = right === 1 ? "Take 1 line" : `Take ${String(right)} lines`;
  return wrong === 0 ? lines : `${lines} and leave ${String(wrong)} out`;
}
