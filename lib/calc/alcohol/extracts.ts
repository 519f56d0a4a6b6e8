import { requireInRange, type Range } from "../errors";
import type { DegreesPlato } from "../units";

/** A wort before fermentation and the beer as a hydrometer reads it; below 0 °P it is lighter than water. */
export interface Extracts {
  readonly originalPlato: DegreesPlato;
  readonly apparentPlato: DegreesPlato;
}

export const FERMENTED_RANGE = { unit: "°P", min: 0, max: 35 } as const;

/** Weaker than this there is nothing whose share could be told. */
export const ATTENUATED_RANGE = { unit: "°P", min: 0.1, max: 35 } as const;

/** Share of the apparent attenuation that is real, Balling: alcohol makes the hydrometer read low. */
export const REAL_SHARE = 0.8192;

/** Apparent attenuation of wort of which nothing is left but alcohol and water. */
export const MOST_ATTENUATION = 1 / REAL_SHARE;

/**
 * Gives the apparent extracts that beer of a wort can have.
 *
 * @param originalPlato - Original extract, °P.
 * @returns From nothing real left, which reads below zero, to the wort itself, °P.
 * @validRange 0 to 35 °P.
 * @throws {@link OutOfRangeError} when `originalPlato` is outside the valid range.
 * @source Balling 1865 (docs/sources.md#balling-1865)
 * @example
 * apparentRange(12); // { unit: "°P", min: −2.648, max: 12 }
 */
export function apparentRange(originalPlato: number): Range {
  requireInRange("original extract", originalPlato, FERMENTED_RANGE);
  return { unit: "°P", min: originalPlato * (1 - MOST_ATTENUATION), max: originalPlato };
}

/**
 * Checks a pair of extracts: the beer holds neither more than the wort did nor less than nothing.
 *
 * @throws {@link OutOfRangeError} when the wort is outside 0 to 35 °P or the beer outside what it can become.
 */
export function requireExtracts({ originalPlato, apparentPlato }: Extracts): void {
  requireInRange("apparent extract", apparentPlato, apparentRange(originalPlato));
}

/**
 * The same for a share of the original extract, which must not be zero.
 *
 * @throws {@link OutOfRangeError} when the wort is outside 0.1 to 35 °P or the beer outside what it can become.
 */
export function requireAttenuation(extracts: Extracts): void {
  requireInRange("original extract", extracts.originalPlato, ATTENUATED_RANGE);
  requireExtracts(extracts);
}
