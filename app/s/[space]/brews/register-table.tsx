import Link from "next/link";
import type { BrewRegisterEntry } from "@/lib/model/brew-register";
import type { Preferences } from "@/lib/model/preferences";
import { DataTable, type DataColumn } from "@/lib/ui/data-table";
import { Day } from "@/lib/ui/day";
import { Quantity } from "@/lib/ui/quantity";

interface RegisterTableProps {
  readonly home: string;
  readonly entries: readonly BrewRegisterEntry[];
  readonly preferences: Preferences;
}

/** The register: one line a batch. */
export function RegisterTable({ home, entries, preferences }: RegisterTableProps) {
  return (
    <DataTable
      caption="Batches"
      captionHidden
      columns={columnsFor(home, preferences)}
      records={entries}
      keyOf={({ id }) => id}
    />
  );
}

function columnsFor(home: string, preferences: Preferences): readonly DataColumn<BrewRegisterEntry>[] {
  return [
    {
      id: "beer",
      label: "Beer",
      cell: ({ id, title }) => (
        <Link href={`${home}/brews/${id}`} className="target">
          {title}
        </Link>
      ),
    },
    { id: "brewer", label: "Brewer", cell: ({ brewerName }) => brewerName },
    { id: "kettle", label: "Kettle", cell: ({ equipmentName }) => equipmentName },
    { id: "state", label: "Where it is", cell: ({ state }) => state },
    {
      id: "begun",
      label: "Begun",
      cell: ({ startedAt }) => (startedAt === null ? "not yet" : <Day at={startedAt} />),
    },
    {
      id: "planned",
      label: "Original extract, planned",
      isNumber: true,
      cell: ({ plannedOriginal }) => (
        <Quantity
          value={plannedOriginal?.value ?? null}
          interval={plannedOriginal}
          dimension="extract"
          preferences={preferences}
          reason="not predicted"
        />
      ),
    },
    {
      id: "measured",
      label: "Original extract, measured",
      isNumber: true,
      cell: ({ id, measuredOriginal }) =>
        measuredOriginal === null ? (
          <Quantity value={null} dimension="extract" preferences={preferences} reason="not measured yet" />
        ) : (
          <Link href={`${home}/brews/${id}/comparison`} className="target">
            <Quantity value={measuredOriginal} dimension="extract" preferences={preferences} />
          </Link>
        ),
    },
  ];
}
