import Link from "next/link";
import type { Preferences } from "@/lib/model/preferences";
import type { EntryResult, ScoredResult } from "@/lib/model/tasting/results-scored";
import { DataTable, type DataColumn } from "@/lib/ui/data-table";
import { Quantity } from "@/lib/ui/quantity";

interface EntryTableProps {
  readonly result: ScoredResult;
  readonly home: string;
  readonly preferences: Preferences;
}

type Column = DataColumn<EntryResult>;

/** The entries of a flight, the best first. */
export function EntryTable({ result, home, preferences }: EntryTableProps) {
  return (
    <DataTable
      caption={`Entries of ${result.flight.title}: means of 50 points, 80 % intervals`}
      captionHidden
      columns={[
        { id: "entry", label: "Entry", cell: (record) => <EntryName record={record} home={home} /> },
        { id: "rank", label: "Rank", isNumber: true, cell: rankWords },
        ...meanColumns(preferences),
        { id: "sheets", label: "Sheets", isNumber: true, cell: sheetWords },
      ]}
      records={result.entries}
      keyOf={({ entry }) => String(entry.entryNo)}
    />
  );
}

function meanColumns(preferences: Preferences): readonly Column[] {
  const shared = { preferences, aligned: true, reason: "cannot be told from these sheets" } as const;
  return [
    {
      ...{ id: "adjusted", label: "Adjusted mean", isNumber: true },
      cell: ({ adjusted }) => (
        <Quantity {...shared} dimension="points" value={adjusted?.adjusted ?? null} interval={adjusted} />
      ),
    },
    {
      ...{ id: "first", label: "Chance of being first", isNumber: true },
      cell: ({ adjusted }) => <Quantity {...shared} dimension="fraction" value={adjusted?.chanceOfFirst ?? null} />,
    },
    {
      ...{ id: "raw", label: "Raw mean", isNumber: true },
      cell: ({ rawMean }) => <Quantity {...shared} dimension="points" value={rawMean} />,
    },
  ];
}

function EntryName({ record, home }: { readonly record: EntryResult; readonly home: string }) {
  const { entryNo, beer, brewer, brewId } = record.entry;
  return (
    <>
      {entryNo}{" "}
      {brewId === null ? (
        beer
      ) : (
        <Link className="target" href={`${home}/brews/${brewId}`}>
          {beer}
        </Link>
      )}
      <span className="block text-muted">{brewer}</span>
    </>
  );
}

function rankWords({ rank, isTied }: EntryResult): string {
  return rank === null ? "none" : `${String(rank)}${isTied ? " (tied)" : ""}`;
}

function sheetWords({ scores, served }: EntryResult): string {
  return `${String(scores.length)} of ${String(served)}`;
}
