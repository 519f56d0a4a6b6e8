import Link from "next/link";
import type { BrewSummary } from "@/lib/model/brew";
import { windowInWords } from "@/lib/model/plain-day";
import type { SharedBrewSummary } from "@/lib/model/shared-brew";
import { DataTable, type DataColumn } from "@/lib/ui/data-table";

interface SharedBrewTableProps {
  readonly home: string;
  readonly sharedBrews: readonly SharedBrewSummary[];
  readonly brews: readonly BrewSummary[];
}

/** What the club brews together, the latest day first. */
export function SharedBrewTable({ home, sharedBrews, brews }: SharedBrewTableProps) {
  const columns: readonly DataColumn<SharedBrewSummary>[] = [
    {
      id: "title",
      label: "Shared brew",
      cell: ({ id, title }) => (
        <Link href={`${home}/shared-brews/${id}`} className="target">
          {title}
        </Link>
      ),
    },
    {
      id: "planned",
      label: "Planned for",
      cell: ({ window }) => windowInWords(window),
    },
    { id: "state", label: "State", cell: ({ state }) => state },
    {
      id: "joined",
      label: "Joined",
      isNumber: true,
      cell: ({ participantIds }) => participantIds.length,
    },
    {
      id: "brewers",
      label: "Brews",
      isNumber: true,
      cell: ({ id }) => brews.filter((brew) => brew.sharedBrewId === id).length,
    },
  ];
  return (
    <DataTable caption="Shared brews" captionHidden columns={columns} records={sharedBrews} keyOf={({ id }) => id} />
  );
}
