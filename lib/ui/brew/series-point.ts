import { loggedRange, SERIES, type SeriesId } from "@/lib/model/log/series";
import type { Expected } from "./far-from-plan";
import { instrumentsFor } from "./reading-instruments";
import type { MeasuringPoint } from "./reading-draft";

/** What each is usually uncertain by, in the library's unit; common practice, no source. */
const USUAL_SD: Readonly<Record<SeriesId, number>> = {
  "kettle.temperature": 0.5,
  "mash.ph": 0.05,
  "fermenter.temperature": 0.5,
  "fermenter.gravity": 0.25,
  "fermenter.ph": 0.05,
  "fermenter.pressure": 0.05,
  "package.pressure": 0.05,
  "day.meter": 0.05,
};

/** A measuring point of something that is read again and again; `expected` where the plan says something of this moment. */
export function seriesPoint(quantity: SeriesId, expected: Expected | null): MeasuringPoint {
  const { label, dimension } = SERIES[quantity];
  const { min, max } = loggedRange(quantity);
  const instruments = instrumentsFor(quantity);
  const usualSd = USUAL_SD[quantity];
  return { quantity, label, dimension, expected, usualSd, range: { min, max }, instruments, volume: null };
}
