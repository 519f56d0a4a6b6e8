import type { QuantityId } from "@/lib/calc/ledger";

/** How a kind of reading is limited: by what a club's vessels and a brewer's instruments can show. */
interface Measurable {
  readonly kind: "volume" | "temperature" | "gravity" | "duration";
  /** The ledger's unit, in which a reading arrives. */
  readonly unit: "L" | "°C" | "°P" | "min";
  readonly min: number;
  readonly max: number;
}

const volume: Measurable = { kind: "volume", unit: "L", min: 0, max: 5000 };
const gravity: Measurable = { kind: "gravity", unit: "°P", min: 0, max: 35 };

/** The numbers of the ledger that somebody can measure on a brew day or after it. */
export const MEASURABLES = {
  "water.mash": volume,
  "water.strike": { kind: "temperature", unit: "°C", min: -5, max: 110 },
  "mash.firstWort": gravity,
  "kettle.preBoil": volume,
  "kettle.preBoilGravity": gravity,
  "kettle.heatingTime": { kind: "duration", unit: "min", min: 0, max: 1440 },
  "kettle.postBoil": volume,
  "fermenter.volume": volume,
  "fermenter.originalExtract": gravity,
  "fermenter.finalExtract": gravity,
  "package.volume": volume,
} as const satisfies Partial<Record<QuantityId, Measurable>>;

export type MeasurableId = keyof typeof MEASURABLES;

// The keys of a constant object are what they are; Object.keys only forgets them.
export const MEASURABLE_IDS = Object.keys(MEASURABLES) as readonly MeasurableId[];

export const INSTRUMENTS = [
  "hydrometer",
  "refractometer",
  "thermometer",
  "sight glass",
  "measuring stick",
  "scale",
  "clock",
  "other",
] as const;

/** One measured value of a brew, in the unit of its ledger quantity. */
export interface Reading {
  readonly id: string;
  readonly brewId: string;
  readonly deviceId: string;
  readonly deviceSeq: number;
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
  readonly receivedAt: Date;
}
