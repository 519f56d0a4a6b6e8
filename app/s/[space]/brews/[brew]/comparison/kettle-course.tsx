import type { Ledger } from "@/lib/calc/ledger";
import type { Brew } from "@/lib/model/brew";
import { thinned } from "@/lib/model/cellar/thinned";
import { dayTemperatures, type DayTemperature } from "@/lib/model/day-temperatures";
import type { Preferences } from "@/lib/model/preferences";
import { CurveChart } from "@/lib/ui/curve-chart";
import { DataTable, type DataColumn } from "@/lib/ui/data-table";
import { displayUnit } from "@/lib/ui/display-unit";
import { Quantity } from "@/lib/ui/quantity";

/** More dots than this are one blot, more lines of a table than this nobody reads. */
const MOST_DOTS = 150;
const MOST_ROWS = 40;

interface KettleCourseProps {
  readonly brew: Brew;
  readonly ledger: Ledger;
  readonly preferences: Preferences;
}

/** Temperature of mash and kettle, planned and read, on one pair of axes; and the readings as a table. */
export function KettleCourse({ brew, ledger, preferences }: KettleCourseProps) {
  const read = dayTemperatures(brew, ledger);
  const { unit, fromLibrary } = displayUnit("temperature", preferences);
  return (
    <div>
      <CurveChart
        title="Mash and kettle temperature"
        description={describe(read)}
        x={{ label: "Hours from the start", unit: "h" }}
        y={{ label: "Temperature", unit }}
        planned={ledger.temperatureCurve.map(([minute, celsius]) => [minute / 60, fromLibrary(celsius)] as const)}
        measured={thinned(read, MOST_DOTS).map(({ minute, celsius }) => ({ x: minute / 60, y: fromLibrary(celsius) }))}
        plannedLabel="planned"
        measuredLabel="read"
      />
      <p className="text-sm text-muted">{describe(read)}</p>
      {read.length === 0 ? null : <AsTable read={thinned(read, MOST_ROWS)} preferences={preferences} />}
    </div>
  );
}

function AsTable({
  read,
  preferences,
}: {
  readonly read: readonly DayTemperature[];
  readonly preferences: Preferences;
}) {
  const columns: readonly DataColumn<DayTemperature>[] = [
    {
      id: "minute",
      label: "After",
      cell: ({ minute }) => <Quantity value={minute} dimension="minutes" preferences={preferences} digits={0} />,
    },
    {
      id: "planned",
      label: "Planned",
      isNumber: true,
      cell: ({ plannedC }) => (
        <Quantity value={plannedC} dimension="temperature" preferences={preferences} reason="the plan ends before" />
      ),
    },
    {
      id: "read",
      label: "Read",
      isNumber: true,
      cell: ({ celsius }) => <Quantity value={celsius} dimension="temperature" preferences={preferences} />,
    },
  ];
  return (
    <details className="mt-2">
      <summary className="target">These temperatures as a table</summary>
      <DataTable
        caption="Mash and kettle temperature, planned and read"
        captionHidden
        columns={columns}
        records={read}
        keyOf={({ id }) => id}
      />
    </details>
  );
}

/** Within this a thermometer and a plan agree, K. */
const NEAR_K = 2;

function describe(read: readonly DayTemperature[]): string {
  if (read.length === 0) return "No temperature was read on the brew day; the line is the plan.";
  const compared = read.flatMap(({ celsius, plannedC }) => (plannedC === null ? [] : [Math.abs(celsius - plannedC)]));
  const near = compared.filter((apart) => apart <= NEAR_K).length;
  return `${String(read.length)} temperatures were read; ${String(near)} of the ${String(compared.length)} that fall within the plan lie within 2 °C of it.`;
}
