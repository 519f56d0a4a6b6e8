import { DataTable } from "@/lib/ui/data-table";

interface StatusTableProps {
  readonly responses: Readonly<Record<string, { readonly description?: unknown }>>;
}

/** What the status of an answer means. */
export function StatusTable({ responses }: StatusTableProps) {
  const rows = Object.entries(responses).map(([status, { description }]) => ({ status, words: String(description) }));
  return (
    <DataTable
      caption="Status"
      captionHidden
      columns={[
        { id: "status", label: "Status", cell: ({ status }) => status },
        { id: "words", label: "What it means", cell: ({ words }) => words },
      ]}
      records={rows}
      keyOf={({ status }) => status}
    />
  );
}
