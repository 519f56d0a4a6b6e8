import Link from "next/link";
import type { ReactNode } from "react";
import type { Tasting } from "@/lib/model/tasting/tasting";
import type { SheetProgress } from "@/lib/server/tastings/sheets-progress";
import { DataTable, type DataColumn } from "@/lib/ui/data-table";

interface ProgressTableProps {
  /** Of the tasting. */
  readonly home: string;
  readonly tasting: Tasting;
  /** Paper is the steward’s. */
  readonly isSteward: boolean;
  /** Reminds judges of what is missing. */
  readonly reminder: ReactNode;
  readonly progress: readonly SheetProgress[];
}

/** How many sheets are in, for the steward and organisers: who is still writing, and never what. */
export function ProgressTable({ home, tasting, isSteward, progress, reminder }: ProgressTableProps) {
  const titles = new Map(tasting.flights.map(({ flightNo, title }) => [flightNo, title]));
  const columns: readonly DataColumn<SheetProgress>[] = [
    { id: "judge", label: "Judge", cell: ({ name }) => name },
    { id: "flight", label: "Flight", cell: ({ flightNo }) => titles.get(flightNo) ?? "" },
    {
      id: "in",
      label: "Handed in",
      isNumber: true,
      cell: ({ handedIn, toCome }) => `${String(handedIn)} of ${String(toCome)}`,
    },
    { id: "begun", label: "Begun", isNumber: true, cell: ({ begun }) => begun },
    {
      id: "missing",
      label: "Missing",
      isNumber: true,
      cell: (row) => (row.handedIn < row.toCome ? <strong>{row.toCome - row.handedIn}</strong> : 0),
    },
  ];
  const takesSheets = tasting.state === "open" || tasting.state === "closed";
  const toCome = progress.reduce((sum, row) => sum + row.toCome, 0);
  const handedIn = progress.reduce((sum, row) => sum + row.handedIn, 0);
  return (
    <section aria-labelledby="progress" className="mt-6">
      <h2 id="progress">Sheets</h2>
      <p className="mb-2">
        {handedIn} of {toCome} are handed in. A sheet that was begun and not handed in does not count.
      </p>
      <DataTable
        caption="Sheets handed in"
        captionHidden
        columns={columns}
        records={progress}
        keyOf={({ flightNo, judgeId }) => `${String(flightNo)} ${judgeId}`}
      />
      {takesSheets && handedIn < toCome ? reminder : null}
      {takesSheets && isSteward ? (
        <p className="mt-3">
          <Link className="target" href={`${home}/paper`}>
            Enter sheets from paper
          </Link>
        </p>
      ) : null}
    </section>
  );
}
