import type { Dimension } from "@/lib/calc/ledger";
import { MEASURABLE_IDS, readingRange, type MeasurableId } from "../reading";

export type MeasuredKind = "volume" | "temperature" | "gravity" | "duration" | "ph" | "pressure" | "energy";

/** What is read again and again while time goes on, beside the numbers of the ledger that are read once. */
export const SERIES = {
  "kettle.temperature": { label: "Temperature in the kettle", dimension: "temperature", kind: "temperature" },
  "mash.ph": { label: "Mash pH, at room temperature", dimension: "ph", kind: "ph" },
  "fermenter.temperature": { label: "Temperature in the fermenter", dimension: "temperature", kind: "temperature" },
  "fermenter.gravity": { label: "Gravity in the fermenter", dimension: "extract", kind: "gravity" },
  "fermenter.ph": { label: "pH in the fermenter", dimension: "ph", kind: "ph" },
  "fermenter.pressure": { label: "Gauge pressure in the fermenter", dimension: "pressure", kind: "pressure" },
  "package.pressure": { label: "Gauge pressure in the package", dimension: "pressure", kind: "pressure" },
  // As it stands, at the start of the day and at its end: the difference is the electricity of the day.
  "day.meter": { label: "Electricity meter", dimension: "energy", kind: "energy" },
} as const satisfies Readonly<
  Record<string, { readonly label: string; readonly dimension: Dimension; readonly kind: MeasuredKind }>
>;

export type SeriesId = keyof typeof SERIES;
export const SERIES_IDS = Object.keys(SERIES) as readonly SeriesId[];

/** Everything that the log takes a measured value of. */
export type LoggedQuantity = MeasurableId | SeriesId;
export const LOGGED_QUANTITIES: readonly LoggedQuantity[] = [...MEASURABLE_IDS, ...SERIES_IDS];

export function isSeries(quantity: LoggedQuantity): quantity is SeriesId {
  return quantity in SERIES;
}

/** What a value of a quantity can be, in the unit in which it is sent. */
export interface LoggedRange {
  readonly kind: MeasuredKind;
  readonly unit: "L" | "°C" | "°P" | "min" | "pH" | "bar" | "kWh";
  readonly min: number;
  readonly max: number;
}

const SERIES_RANGES: Readonly<Record<SeriesId, LoggedRange>> = {
  "kettle.temperature": { kind: "temperature", unit: "°C", min: -5, max: 110 },
  "mash.ph": { kind: "ph", unit: "pH", min: 2, max: 12 },
  "fermenter.temperature": { kind: "temperature", unit: "°C", min: -10, max: 60 },
  // Beer may be lighter than water, as in readingRange.
  "fermenter.gravity": { kind: "gravity", unit: "°P", min: -5, max: 35 },
  "fermenter.ph": { kind: "ph", unit: "pH", min: 2, max: 12 },
  "fermenter.pressure": { kind: "pressure", unit: "bar", min: -1, max: 10 },
  "package.pressure": { kind: "pressure", unit: "bar", min: -1, max: 10 },
  "day.meter": { kind: "energy", unit: "kWh", min: 0, max: 1_000_000 },
};

export function loggedRange(quantity: LoggedQuantity): LoggedRange {
  return isSeries(quantity) ? SERIES_RANGES[quantity] : readingRange(quantity);
}
