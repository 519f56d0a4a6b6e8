import Link from "next/link";
import type { Participant, SharedBrewSummary } from "@/lib/model/shared-brew";
import { timeInWords } from "@/lib/model/zoned-time";
import { DataTable, type DataColumn } from "@/lib/ui/data-table";

interface ParticipantTableProps {
  readonly home: string;
  readonly shared: SharedBrewSummary;
  readonly participants: readonly Participant[];
}

/** Who takes part with which kettle, when they brew, and whether they know the newest plan. */
export function ParticipantTable({ home, shared, participants }: ParticipantTableProps) {
  const columns: readonly DataColumn<Participant>[] = [
    {
      id: "kettle",
      label: "Sheet",
      cell: ({ equipmentId, userName, kettleName }) => (
        <Link href={`${home}/shared-brews/${shared.id}/kettles/${equipmentId}`} className="target">
          {userName}, {kettleName}
        </Link>
      ),
    },
    {
      id: "day",
      label: "Brew day",
      cell: ({ brewAt, zone }) => (brewAt === null || zone === null ? "not chosen" : timeInWords(brewAt, zone)),
    },
    { id: "seen", label: "Plan", cell: (part) => planWords(part, shared.version) },
    {
      id: "brew",
      label: "Brew",
      cell: ({ brew }) =>
        brew === null ? (
          "not planned"
        ) : (
          <Link href={`${home}/brews/${brew.id}`} className="target">
            {brew.state}
          </Link>
        ),
    },
  ];
  return (
    <DataTable
      caption="Who takes part"
      captionHidden
      columns={columns}
      records={participants}
      keyOf={({ equipmentId }) => equipmentId}
    />
  );
}

function planWords({ brew, seenVersion }: Participant, version: number): string {
  if (brew !== null && brew.planVersion < version) return `brew planned under version ${String(brew.planVersion)}`;
  return seenVersion < version ? `seen version ${String(seenVersion)}` : "seen";
}
