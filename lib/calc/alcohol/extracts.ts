import { requireInRange } from "../errors";
import type { DegreesPlato } from "../units";

/** A wort before fermentation and the beer as a hydrometer reads it. */
export interface Extracts {
  readonly originalPlato: DegreesPlato;
  readonly apparentPlato: DegreesPlato;
}

export const FERMENTED_RANGE = { unit: "°P", min: 0, max: 35 } as const;

/** Weaker than this there is nothing whose share could be told. */
const ATTENUATION_RANGE = { unit: "°P", min: 0.1, max: 35 } as const;

/**
 * Checks a pair of extracts: the beer cannot hold more than the wort did.
 *
 * @throws {@link OutOfRangeError} when the wort is outside 0 to 35 °P or the beer above it.
 */
export function requireExtracts({ originalPlato, apparentPlato }: Extracts): void {
  requireInRange("original extract", originalPlato, FERMENTED_RANGE);
  if (!(apparentPlato >= 0 && apparentPlato <= originalPlato)) {
    requireInRange("apparent extract", apparentPlato, { unit: "°P", min: 0, max: originalPlato });
  }
}

/**
 * The same for a share of the original extract, which must not be zero.
 *
 * @throws {@link OutOfRangeError} when the wort is outside 0.1 to 35 °P or the beer above it.
 */
export function requireAttenuation(extracts: Extracts): void {
  requireInRange("original extract", extracts.originalPlato, ATTENUATION_RANGE);
  requireExtracts(extracts);
}
