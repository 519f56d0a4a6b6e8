import Link from "next/link";
import type { BrewSummary } from "@/lib/model/brew";
import { DataTable, type DataColumn } from "@/lib/ui/data-table";
import { Day } from "@/lib/ui/day";

interface BrewerTableProps {
  readonly home: string;
  readonly brews: readonly BrewSummary[];
}

/** Who brews on what, and how far they are. */
export function BrewerTable({ home, brews }: BrewerTableProps) {
  const columns: readonly DataColumn<BrewSummary>[] = [
    {
      id: "brewer",
      label: "Brewer",
      cell: ({ id, brewerName }) => (
        <Link href={`${home}/brews/${id}`} className="target">
          {brewerName}
        </Link>
      ),
    },
    { id: "kettle", label: "Kettle", cell: ({ equipmentName }) => equipmentName },
    { id: "state", label: "Where it is", cell: ({ state }) => state },
    {
      id: "begun",
      label: "Begun",
      cell: ({ startedAt }) => (startedAt === null ? "not yet" : <Day at={startedAt} />),
    },
    {
      id: "comparison",
      label: "Planned against measured",
      cell: ({ id, brewerName }) => (
        <Link href={`${home}/brews/${id}/comparison`} className="target">
          Compare<span className="sr-only"> for {brewerName}</span>
        </Link>
      ),
    },
  ];
  return <DataTable caption="Who brews" captionHidden columns={columns} records={brews} keyOf={({ id }) => id} />;
}
