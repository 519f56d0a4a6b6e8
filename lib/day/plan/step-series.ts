import type { Step, StepName } from "@/lib/calc/runsheet";
import type { MeasuringPoint } from "@/lib/ui/brew/reading-draft";
import { seriesPoint } from "@/lib/ui/brew/series-point";

const WARM: ReadonlySet<StepName> = new Set<StepName>([
  "heat strike water",
  "rest",
  "heat between rests",
  "heat to the boil",
  "cool to the stand",
  "stand",
  "chill",
]);

/** What may be read as often as one likes while a step goes on. The temperature tells when a ramp will be over. */
export function seriesOfStep({ name, id, celsius }: Step): readonly MeasuringPoint[] {
  const points: MeasuringPoint[] = [];
  const isRest = name === "rest" || name === "stand";
  // On the way the thermometer shows less; only a rest is expected to be at its temperature.
  const expected = isRest && celsius !== null ? { value: celsius, interval: null } : null;
  if (WARM.has(name)) points.push(seriesPoint("kettle.temperature", expected));
  if (id === "rest-1") points.push(seriesPoint("mash.ph", null));
  // At both ends of what draws current.
  if (id === "weigh-out-1" || name === "clean") points.push(seriesPoint("day.meter", null));
  if (name === "pitch")
    points.push(seriesPoint("fermenter.temperature", celsius === null ? null : { value: celsius, interval: null }));
  return points;
}
