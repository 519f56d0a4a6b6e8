import type { ReactElement } from "react";
import { CurveChart } from "@/lib/ui/curve-chart";
import { displayUnit } from "@/lib/ui/display-unit";
import { formatQuantity } from "@/lib/ui/format-quantity";
import { useDay } from "./day-context";

const HOUR_MS = 3_600_000;
const AFTER_H = 3;

/** The predicted temperature of the day with the temperatures that were read. */
export function DayChart(): ReactElement | null {
  const { plan, day, log, preferences } = useDay();
  if (plan === null) return null;
  const { unit, fromLibrary } = displayUnit("temperature", preferences);
  const { temperatureCurve } = plan.ledger;
  const planned = temperatureCurve.map(([minute, celsius]) => [minute / 60, fromLibrary(celsius)] as const);
  const lastHour = planned.at(-1)?.[0] ?? 0;
  const { startedAt } = day;
  const read = log.readings.filter(
    ({ measured, isVoid }) =>
      !isVoid && (measured.quantity === "kettle.temperature" || measured.quantity === "water.strike"),
  );
  const measured =
    startedAt === null
      ? []
      : read
          .map(({ at, measured: { value } }) => ({ x: (at - startedAt) / HOUR_MS, y: fromLibrary(value) }))
          .filter(({ x }) => x >= 0 && x <= lastHour + AFTER_H);
  const hottest = formatQuantity({
    value: Math.max(...temperatureCurve.map(([, celsius]) => celsius)),
    dimension: "temperature",
    preferences,
  });
  const count =
    measured.length === 0 ? "No temperature has been read yet." : `${String(measured.length)} have been read.`;
  return (
    <CurveChart
      title="Temperature in the course of the day"
      description={`The highest is ${hottest.spoken}. The list of the day has every step as text. ${count}`}
      x={{ label: "Hours from the start", unit: "h" }}
      y={{ label: "Temperature", unit }}
      planned={planned}
      measured={measured}
      plannedLabel="planned"
      measuredLabel="measured"
    />
  );
}
