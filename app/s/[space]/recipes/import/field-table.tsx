import type { FieldReport } from "@/lib/model/exchange/report";
import { DataTable, type DataColumn } from "@/lib/ui/data-table";

interface FieldTableProps {
  readonly title: string;
  readonly fields: readonly FieldReport[];
}

const WORDS = { taken: "Taken", converted: "Converted", kept: "Kept", refused: "Refused" } as const;

const COLUMNS: readonly DataColumn<FieldReport>[] = [
  { id: "field", label: "Field", cell: ({ field }) => field },
  { id: "line", label: "Line", isNumber: true, cell: ({ line }) => line },
  { id: "value", label: "In the file", cell: ({ value }) => <span className="wrap-anywhere">{value}</span> },
  {
    id: "done",
    label: "What is done",
    cell: ({ done, note }) => (
      <>
        <strong className={done === "refused" ? "text-attention" : undefined}>{WORDS[done]}</strong>
        {note === "" ? "" : ` ${note}`}
      </>
    ),
  },
];

/** Every field of one recipe in the order of the file. */
export function FieldTable({ title, fields }: FieldTableProps) {
  return (
    <DataTable
      caption={`Fields of ${title}`}
      captionHidden
      columns={COLUMNS}
      records={fields}
      keyOf={({ line, field }) => `${String(line)} ${field}`}
    />
  );
}
