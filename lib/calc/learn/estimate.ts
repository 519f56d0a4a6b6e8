import { requireInRange, type Range } from "../errors";

/** A figure that a trial found, or one that was known before it. */
export interface Estimate<Q extends number = number> {
  readonly value: Q;
  /** Standard error, in the unit of the value. */
  readonly standardError: number;
}

/** A number as somebody states it. */
export interface Stated<Q extends number = number> {
  readonly value: Q;
  /** Standard uncertainty, in the unit of the value; 0 where it counts as exact. */
  readonly sd: number;
}

/**
 * Passes a stated number through when value and uncertainty lie in the range.
 *
 * @returns The same.
 * @throws {@link OutOfRangeError} when the value is outside its range, or the uncertainty wider than it.
 */
export function requireStated<Q extends number>(quantity: string, stated: Stated<Q>, range: Range): Stated<Q> {
  requireInRange(quantity, stated.value, range);
  requireInRange(`${quantity}, uncertainty`, stated.sd, { unit: range.unit, min: 0, max: range.max - range.min });
  return stated;
}

/** How far a reading may be uncertain; one that is certain would weigh without end. */
export const READING_SD_RANGE = {
  celsius: { unit: "K", min: 0.001, max: 20 },
  litres: { unit: "L", min: 0.0001, max: 1000 },
} as const satisfies Record<string, Range>;

/** How many runs and readings one trial takes. */
export const TRIAL_RANGE = {
  runs: { unit: "", min: 1, max: 20 },
  readings: { unit: "", min: 0, max: 500 },
  seconds: { unit: "s", min: 0, max: 172_800 },
} as const satisfies Record<string, Range>;

/** What counts as exact is still this uncertain, so that it may stand among the readings. */
const NEARLY_EXACT = 1e-4;

/**
 * Takes a stated number for a reading, which cannot be exact.
 *
 * @returns The same, with an uncertainty of a ten-thousandth at least.
 */
export const nearlyExact = ({ value, sd }: Stated): Stated => ({
  value,
  sd: Math.max(sd, NEARLY_EXACT * Math.max(Math.abs(value), 1)),
});
