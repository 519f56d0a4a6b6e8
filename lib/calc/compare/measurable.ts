import type { QuantityId } from "../ledger";

interface Measurable {
  readonly kind: "volume" | "temperature" | "gravity" | "duration";
  /** Standard uncertainty of one reading with this instrument, in the ledger's unit. */
  readonly typicalSd: number;
  readonly instrument: "measuring stick" | "sight glass" | "hydrometer" | "thermometer" | "clock" | "scale";
}

/** A measuring stick or a sight glass on a kettle, ±0.3 L. */
const stick: Measurable = { kind: "volume", typicalSd: 0.3, instrument: "measuring stick" };

/** A hydrometer read to ±0.001 SG, which is about 0.25 °P. */
const hydrometer: Measurable = { kind: "gravity", typicalSd: 0.25, instrument: "hydrometer" };

/**
 * What can be measured on a brew day and after it, with what, and how well. Uncertainties are common practice, no
 * source; a reading brings its own.
 */
export const MEASURABLE = {
  "water.mash": stick,
  "water.strike": { kind: "temperature", typicalSd: 0.5, instrument: "thermometer" },
  "mash.firstWort": hydrometer,
  "kettle.preBoil": stick,
  "kettle.preBoilGravity": hydrometer,
  "kettle.heatingTime": { kind: "duration", typicalSd: 1, instrument: "clock" },
  "kettle.postBoil": stick,
  "fermenter.volume": { ...stick, instrument: "sight glass" },
  "fermenter.originalExtract": hydrometer,
  "fermenter.finalExtract": hydrometer,
  "package.volume": { ...stick, instrument: "scale" },
} as const satisfies Partial<Record<QuantityId, Measurable>>;

export type MeasurableQuantity = keyof typeof MEASURABLE;

// The keys of a constant object are what they are; Object.keys only forgets them.
export const MEASURABLE_QUANTITIES = Object.keys(MEASURABLE) as readonly MeasurableQuantity[];
