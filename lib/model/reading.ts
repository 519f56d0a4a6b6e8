import { MEASURABLE, MEASURABLE_QUANTITIES, type MeasurableQuantity } from "@/lib/calc/compare";

/** How a kind of reading is limited: by what a club's vessels and a brewer's instruments can show. */
interface ReadingRange {
  readonly kind: (typeof MEASURABLE)[MeasurableQuantity]["kind"];
  /** The ledger's unit, in which a reading arrives. */
  readonly unit: "L" | "°C" | "°P" | "min";
  readonly min: number;
  readonly max: number;
}

const RANGES: Readonly<Record<ReadingRange["kind"], ReadingRange>> = {
  volume: { kind: "volume", unit: "L", min: 0, max: 5000 },
  temperature: { kind: "temperature", unit: "°C", min: -5, max: 110 },
  gravity: { kind: "gravity", unit: "°P", min: 0, max: 35 },
  duration: { kind: "duration", unit: "min", min: 0, max: 1440 },
};

/** The numbers of the ledger that somebody can measure on a brew day or after it. */
export type MeasurableId = MeasurableQuantity;
export const MEASURABLE_IDS = MEASURABLE_QUANTITIES;

/** Beer may be lighter than water: −5 °P is 0.981 SG, drier than any wort below 22 °P can become. */
const BEER_GRAVITY: ReadingRange = { ...RANGES.gravity, min: -5 };

export function readingRange(quantity: MeasurableId): ReadingRange {
  return quantity === "fermenter.finalExtract" ? BEER_GRAVITY : RANGES[MEASURABLE[quantity].kind];
}

export const INSTRUMENTS = [
  "hydrometer",
  "refractometer",
  "thermometer",
  "sight glass",
  "measuring stick",
  "scale",
  "clock",
  "pH meter",
  "pressure gauge",
  "electricity meter",
  "probe",
  "other",
] as const;

/** One measured value of a brew, in the unit of its ledger quantity. */
export interface Reading {
  readonly id: string;
  readonly brewId: string;
  readonly deviceId: string;
  /** null from a sensor, which keeps no count. */
  readonly deviceSeq: number | null;
  readonly quantity: MeasurableId;
  readonly value: number;
  /** Stated standard uncertainty, in the unit of the value. */
  readonly sd: number;
  readonly instrument: (typeof INSTRUMENTS)[number];
  /** Temperature of the sample; null where it does not matter. */
  readonly sampleC: number | null;
  readonly occurredAt: Date;
  readonly note: string;
  /** What was typed, as it was typed. */
  readonly entered: string;
  readonly actorName: string;
  /** null while it is on this device only. */
  readonly receivedAt: Date | null;
  /** A correction has taken its place, or it was voided. It stays in the log and does not count. */
  readonly replaced: boolean;
}
