import type { Ledger } from "@/lib/calc/ledger";
import type { Brew } from "@/lib/model/brew";
import type { Preferences } from "@/lib/model/preferences";
import { CurveChart } from "@/lib/ui/curve-chart";
import { displayUnit } from "@/lib/ui/display-unit";
import { formatQuantity } from "@/lib/ui/format-quantity";

const MINUTE_MS = 60_000;

interface TemperatureChartProps {
  readonly brew: Brew;
  readonly ledger: Ledger;
  readonly preferences: Preferences;
}

/** The predicted temperature of the day with the temperatures that were read. */
export function TemperatureChart({ brew, ledger, preferences }: TemperatureChartProps) {
  const { unit, fromLibrary } = displayUnit("temperature", preferences);
  const { startedAt } = brew;
  const planned = ledger.temperatureCurve.map(([minute, celsius]) => [minute / 60, fromLibrary(celsius)] as const);
  const readings = brew.readings.filter(({ quantity }) => quantity === "water.strike");
  const measured =
    startedAt === null
      ? []
      : readings.map(({ occurredAt, value }) => ({
          x: (occurredAt.getTime() - startedAt.getTime()) / MINUTE_MS / 60,
          y: fromLibrary(value),
        }));
  // A reading entered days later would squeeze the day into a corner.
  const lastHour = planned.at(-1)?.[0] ?? 0;
  const ofTheDay = measured.filter(({ x }) => x >= -1 && x <= lastHour + 3);
  return (
    <CurveChart
      title="Temperature in the course of the day"
      description={describe(ledger, ofTheDay.length, preferences)}
      x={{ label: "Hours from the start", unit: "h" }}
      y={{ label: "Temperature", unit }}
      planned={planned}
      measured={ofTheDay}
      plannedLabel="planned"
      measuredLabel="measured"
    />
  );
}

function describe({ temperatureCurve }: Ledger, readings: number, preferences: Preferences): string {
  const hottest = Math.max(...temperatureCurve.map(([, celsius]) => celsius));
  const { spoken } = formatQuantity({ value: hottest, dimension: "temperature", preferences });
  const hours = ((temperatureCurve.at(-1)?.[0] ?? 0) / 60).toFixed(1);
  const measured = readings === 0 ? "No temperature has been read yet." : `${readings} temperatures have been read.`;
  return `Planned over ${hours} hours; the highest is ${spoken}. The run sheet has every step as text. ${measured}`;
}
