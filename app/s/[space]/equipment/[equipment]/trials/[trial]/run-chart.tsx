import type { Preferences } from "@/lib/model/preferences";
import { timeOf, type TrialRun } from "@/lib/model/trial/trial-log";
import { boilOffRun } from "@/lib/model/trial/run-inputs";
import { waterDensity } from "@/lib/calc/gravity";
import { CurveChart, type MeasuredPoint } from "@/lib/ui/curve-chart";
import { displayUnit } from "@/lib/ui/display-unit";
import { isFarOff } from "./far-off";

interface RunChartProps {
  readonly run: TrialRun;
  readonly title: string;
  /** In minutes and the library's unit; empty until there is a fit. */
  readonly curve: readonly (readonly [x: number, y: number])[];
  readonly residuals: readonly (number | null)[];
  readonly preferences: Preferences;
}

/** The readings of one run as dots, on the fitted curve. */
export function RunChart({ run, title, curve, residuals, preferences }: RunChartProps) {
  const isBoil = run.part === "boil-off";
  const { unit, fromLibrary } = displayUnit(isBoil ? "mass" : "temperature", preferences);
  const dots = dotsOf(run).map((dot, i) => ({ ...dot, y: fromLibrary(dot.y), isSuspect: isFarOff(residuals[i]) }));
  if (dots.length < 2) return null;
  const fitted = curve.map(([x, y]) => [x, fromLibrary(y)] as const);
  return (
    <CurveChart
      title={`${title}, run ${String(run.run)}`}
      description={`${String(dots.length)} readings over ${String(Math.round(dots.at(-1)?.x ?? 0))} minutes${curve.length === 0 ? "" : ", and the curve that fits them best"}. The list has every reading as text.`}
      x={{ label: "Minutes from the first reading", unit: "min" }}
      y={{ label: isBoil ? "Water left" : "Temperature", unit }}
      planned={fitted}
      measured={dots}
      plannedLabel={curve.length === 0 ? "" : "line fitted, dots read"}
    />
  );
}

function dotsOf(run: TrialRun): readonly MeasuredPoint[] {
  if (run.part === "boil-off") {
    const { readings } = boilOffRun(run);
    return readings.map(({ seconds, litres, celsius }) => ({ x: seconds / 60, y: litres * waterDensity(celsius) }));
  }
  const [first] = run.readings;
  return run.readings.flatMap(({ entry }) =>
    entry.kind === "temperature" && first !== undefined
      ? [{ x: (timeOf(entry) - timeOf(first.entry)) / 60_000, y: entry.value }]
      : [],
  );
}
