import { brewTimes, type StretchTime } from "@/lib/model/brew-times";
import type { Brew } from "@/lib/model/brew";
import type { Preferences } from "@/lib/model/preferences";
import { DataTable, type DataColumn } from "@/lib/ui/data-table";
import { Quantity } from "@/lib/ui/quantity";

interface DayTimesProps {
  readonly brew: Brew;
  readonly preferences: Preferences;
}

/** When each stretch of the day was planned and when it was, by the steps that were confirmed. */
export function DayTimes({ brew, preferences }: DayTimesProps) {
  const times = brewTimes(brew);
  if (times.length === 0) return null;
  const minutes = (value: number | null) => (
    <Quantity value={value} dimension="minutes" preferences={preferences} digits={0} reason="not confirmed" />
  );
  const columns: readonly DataColumn<StretchTime>[] = [
    { id: "stretch", label: "Stretch", cell: ({ label }) => label },
    { id: "planned", label: "Planned", isNumber: true, cell: ({ plannedMinutes }) => minutes(plannedMinutes) },
    { id: "took", label: "Took", isNumber: true, cell: (time) => minutes(time.minutes) },
    {
      id: "plannedStart",
      label: "Planned after",
      isNumber: true,
      cell: ({ plannedStart }) => minutes(plannedStart),
    },
    { id: "start", label: "Began after", isNumber: true, cell: ({ start }) => minutes(start) },
  ];
  return (
    <section aria-labelledby="times" className="mt-10">
      <h2 id="times">Times</h2>
      <p className="mt-1 mb-3 text-muted">Minutes, by the steps that were confirmed, counted from the first of them.</p>
      <DataTable
        caption="Times of the brew day, planned and as confirmed"
        captionHidden
        columns={columns}
        records={times}
        keyOf={({ id }) => id}
      />
    </section>
  );
}
