import type { Recipe } from "@/lib/calc/ledger";
import { thinned } from "@/lib/model/cellar/thinned";
import { YEAST_CLASSES } from "@/lib/model/yeast-classes";
import { CurveChart } from "@/lib/ui/curve-chart";
import { displayUnit } from "@/lib/ui/display-unit";
import { formatQuantity } from "@/lib/ui/format-quantity";
import type { CellarPart } from "./cellar-part";

const MOST_DOTS = 150;

interface TemperatureCourseProps extends Pick<CellarPart, "fermentation" | "preferences"> {
  readonly yeast: Recipe["yeast"];
}

/** The temperatures that were read, beside what the recipe plans and what its class of yeast takes. */
export function TemperatureCourse({ fermentation: { temperatures }, yeast, preferences }: TemperatureCourseProps) {
  if (temperatures.length === 0) return null;
  const { unit, fromLibrary } = displayUnit("temperature", preferences);
  const last = Math.max(1, temperatures.at(-1)?.day ?? 1);
  const kind = YEAST_CLASSES.find(({ name }) => name === yeast.name);
  const band =
    kind === undefined
      ? []
      : [0, last].map((day) => [day, fromLibrary(kind.celsiusLow), fromLibrary(kind.celsiusHigh)] as const);
  const inWords = (value: number): string => {
    const { text, unit: spelt } = formatQuantity({ value, dimension: "temperature", preferences });
    return `${text} ${spelt}`;
  };
  const outside = kind === undefined ? 0 : temperatures.filter(isOutside(kind)).length;
  const words =
    kind === undefined
      ? `Planned at ${inWords(yeast.celsius)}. Of this yeast no usual range is known here.`
      : `Planned at ${inWords(yeast.celsius)}; its class of yeast usually ferments at ${inWords(kind.celsiusLow)} to ${inWords(kind.celsiusHigh)}. ${outsideWords(outside, temperatures.length)}`;
  return (
    <div className="mt-6">
      <CurveChart
        title="Temperature in the fermenter"
        description={words}
        x={{ label: "Days since pitching", unit: "d" }}
        y={{ label: "Temperature", unit }}
        planned={[0, last].map((day) => [day, fromLibrary(yeast.celsius)] as const)}
        band={band}
        measured={thinned(temperatures, MOST_DOTS).map(({ day, value }) => ({ x: day, y: fromLibrary(value) }))}
        plannedLabel="planned"
        measuredLabel="read"
      />
      <p className="text-sm text-muted">{words}</p>
    </div>
  );
}

function isOutside({ celsiusLow, celsiusHigh }: (typeof YEAST_CLASSES)[number]) {
  return ({ value }: { readonly value: number }): boolean => value < celsiusLow || value > celsiusHigh;
}

function outsideWords(outside: number, all: number): string {
  if (outside === 0) return "Every reading lies within it.";
  return `${String(outside)} of ${String(all)} readings lie outside it.`;
}
