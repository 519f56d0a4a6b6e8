import type { Interval } from "@/lib/calc/ledger";
import type { Brew } from "@/lib/model/brew";
import { fermentationOf, type CellarPoint } from "@/lib/model/cellar/fermentation";
import { thinned } from "@/lib/model/cellar/thinned";
import type { Preferences } from "@/lib/model/preferences";
import { CurveChart } from "@/lib/ui/curve-chart";
import { DataTable, type DataColumn } from "@/lib/ui/data-table";
import { displayUnit } from "@/lib/ui/display-unit";
import { formatQuantity } from "@/lib/ui/format-quantity";
import { Quantity } from "@/lib/ui/quantity";

const MOST_DOTS = 150;
const MOST_ROWS = 40;

interface FermentationCourseProps {
  readonly brew: Brew;
  readonly preferences: Preferences;
}

/** Gravity and temperature of the fermentation with what was planned for them; nothing where nobody read either. */
export function FermentationCourse({ brew, preferences }: FermentationCourseProps) {
  const { gravities, temperatures } = fermentationOf(brew);
  const planned = brew.predicted["fermenter.finalExtract"] ?? null;
  const { celsius } = brew.recipe.yeast;
  return (
    <>
      {gravities.length === 0 ? null : (
        <Course
          {...{ points: gravities, dimension: "extract", preferences }}
          title="Gravity in the fermenter"
          plannedValue={planned?.value ?? null}
          interval={planned}
          plannedLabel="planned end"
        />
      )}
      {temperatures.length === 0 ? null : (
        <Course
          {...{ points: temperatures, dimension: "temperature", preferences }}
          title="Temperature in the fermenter"
          plannedValue={celsius}
          interval={null}
          plannedLabel="planned"
        />
      )}
    </>
  );
}

interface CourseProps {
  readonly title: string;
  readonly points: readonly CellarPoint[];
  readonly dimension: "extract" | "temperature";
  readonly plannedValue: number | null;
  readonly interval: Interval | null;
  readonly plannedLabel: string;
  readonly preferences: Preferences;
}

/** The plan knows no course of a fermentation, only its end and its temperature: a level line with its 80 % interval. */
function Course({ title, points, dimension, plannedValue, interval, plannedLabel, preferences }: CourseProps) {
  const { unit, fromLibrary } = displayUnit(dimension, preferences);
  const last = Math.max(1, points.at(-1)?.day ?? 1);
  const level = (value: number) => [0, last].map((day) => [day, fromLibrary(value)] as const);
  const words = describe({ points, dimension, plannedValue, preferences });
  return (
    <div>
      <CurveChart
        title={title}
        description={words}
        x={{ label: "Days since pitching", unit: "d" }}
        y={{ label: dimension === "extract" ? "Gravity" : "Temperature", unit }}
        planned={plannedValue === null ? [] : level(plannedValue)}
        band={
          interval === null
            ? []
            : [0, last].map((day) => [day, fromLibrary(interval.low80), fromLibrary(interval.high80)] as const)
        }
        measured={thinned(points, MOST_DOTS).map(({ day, value }) => ({ x: day, y: fromLibrary(value) }))}
        plannedLabel={plannedValue === null ? "" : plannedLabel}
        measuredLabel="read"
      />
      <p className="text-sm text-muted">{words}</p>
      <AsTable {...{ title, dimension, preferences }} points={thinned(points, MOST_ROWS)} />
    </div>
  );
}

function AsTable({
  title,
  points,
  dimension,
  preferences,
}: Pick<CourseProps, "title" | "points" | "dimension" | "preferences">) {
  const columns: readonly DataColumn<CellarPoint>[] = [
    { id: "day", label: "Day", cell: ({ day }) => String(Math.round(10 * day) / 10) },
    {
      id: "read",
      label: "Read",
      isNumber: true,
      cell: ({ value }) => <Quantity value={value} dimension={dimension} preferences={preferences} />,
    },
  ];
  return (
    <details className="mt-2">
      <summary className="target">{title} as a table</summary>
      <DataTable caption={title} captionHidden columns={columns} records={points} keyOf={({ id }) => id} />
    </details>
  );
}

function describe({
  points,
  dimension,
  plannedValue,
  preferences,
}: Pick<CourseProps, "points" | "dimension" | "plannedValue" | "preferences">): string {
  const inWords = (value: number): string => {
    const { text, unit } = formatQuantity({ value, dimension, preferences });
    return `${text} ${unit}`;
  };
  const last = points.at(-1);
  const end = last === undefined ? "" : ` The last of ${String(points.length)} readings is ${inWords(last.value)}.`;
  if (plannedValue === null) return `Nothing was planned.${end}`;
  return `${dimension === "extract" ? "Planned to end at" : "Planned at"} ${inWords(plannedValue)}.${end}`;
}
