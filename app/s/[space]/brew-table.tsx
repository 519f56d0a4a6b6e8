import Link from "next/link";
import type { BrewSummary } from "@/lib/model/brew";
import { DataTable, type DataColumn } from "@/lib/ui/data-table";
import { Day } from "@/lib/ui/day";

interface BrewTableProps {
  readonly home: string;
  readonly caption: string;
  readonly brews: readonly BrewSummary[];
  /** Names the beer as well, where the batches are of several. */
  readonly withTitle?: boolean;
}

/** Batches with their brewer, kettle and where they are. */
export function BrewTable({ home, caption, brews, withTitle = false }: BrewTableProps) {
  return (
    <DataTable
      caption={caption}
      captionHidden
      columns={columnsFor(home, withTitle)}
      records={brews}
      keyOf={(brew) => brew.id}
    />
  );
}

function columnsFor(home: string, withTitle: boolean): readonly DataColumn<BrewSummary>[] {
  const linkTo = (brew: BrewSummary, text: string) => (
    <Link href={`${home}/brews/${brew.id}`} className="target">
      {text}
    </Link>
  );
  const beer: DataColumn<BrewSummary> = { id: "beer", label: "Beer", cell: (brew) => linkTo(brew, brew.title) };
  return [
    ...(withTitle ? [beer] : []),
    {
      id: "brewer",
      label: "Brewer",
      cell: (brew) => (withTitle ? brew.brewerName : linkTo(brew, brew.brewerName)),
    },
    { id: "kettle", label: "Kettle", cell: (brew) => brew.equipmentName },
    { id: "state", label: "Where it is", cell: (brew) => brew.state },
    {
      id: "begun",
      label: "Begun",
      cell: (brew) => (brew.startedAt === null ? "not yet" : <Day at={brew.startedAt} />),
    },
  ];
}
