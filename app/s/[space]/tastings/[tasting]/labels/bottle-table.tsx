import type { ReactElement } from "react";
import { DataTable, type DataColumn } from "@/lib/ui/data-table";

export interface LabelledEntry {
  readonly entryNo: number;
  readonly flight: string;
  readonly beer: string;
  readonly brewer: string;
  /** Of a judge's sheet for it. */
  readonly path: string;
}

const COLUMNS: readonly DataColumn<LabelledEntry>[] = [
  { id: "beer", label: "Bottle of", cell: ({ beer, brewer }) => (brewer === "" ? beer : `${beer}, ${brewer}`) },
  { id: "code", label: "Gets the code", isNumber: true, cell: ({ entryNo }) => entryNo },
  { id: "flight", label: "Flight", cell: ({ flight }) => flight },
];

/** Which bottle gets which label: for the steward's eyes, and never on paper. */
export function BottleTable({ entries }: { readonly entries: readonly LabelledEntry[] }): ReactElement {
  if (entries.length === 0) return <p className="text-muted">No beer is entered yet.</p>;
  return (
    <DataTable
      caption="Which bottle gets which code"
      captionHidden
      columns={COLUMNS}
      records={entries}
      keyOf={({ entryNo }) => String(entryNo)}
    />
  );
}
