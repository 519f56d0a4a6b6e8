import Link from "next/link";
import { timeInWords } from "@/lib/model/zoned-time";
import type { OwnBrewDay } from "@/lib/server/shared-brews/own-days";
import { DataTable } from "@/lib/ui/data-table";

interface BrewDayTableProps {
  readonly home: string;
  readonly days: readonly OwnBrewDay[];
}

/** The days that a member has chosen, the latest first. */
export function BrewDayTable({ home, days }: BrewDayTableProps) {
  const sheetOf = ({ sharedBrewId, equipmentId }: OwnBrewDay) =>
    `${home}/shared-brews/${sharedBrewId}/kettles/${equipmentId}`;
  return (
    <DataTable<OwnBrewDay>
      caption="Your brew days"
      captionHidden
      columns={[
        {
          id: "brew",
          label: "Shared brew",
          cell: (day) => (
            <Link href={sheetOf(day)} className="target">
              {day.title}
            </Link>
          ),
        },
        { id: "kettle", label: "Kettle", cell: ({ kettleName }) => kettleName },
        { id: "day", label: "Begins", cell: ({ brewAt, zone }) => timeInWords(brewAt, zone) },
        {
          id: "calendar",
          label: "Calendar",
          cell: (day) => (
            <a href={`${sheetOf(day)}/calendar`} className="target">
              Take it<span className="sr-only"> on {day.kettleName} into a calendar</span>
            </a>
          ),
        },
      ]}
      records={days}
      keyOf={({ sharedBrewId, equipmentId }) => `${sharedBrewId} ${equipmentId}`}
    />
  );
}
