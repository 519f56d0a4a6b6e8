import { apparentRange, FERMENTED_RANGE, type Extracts } from "../alcohol";
import { degreesPlato } from "../units";
import type { ReadValues } from "./latest-readings";

/** Below this there is nothing whose share could be told, °P. */
export const WEAKEST_PLATO = 0.1;

/**
 * Takes original and final extract together, as far as they can be of one beer.
 *
 * @returns Both, °P; null where one is missing, the wort is out of range, or the beer would be stronger than its wort or
 * hold less than nothing.
 */
export function measuredExtracts(read: ReadValues): Extracts | null {
  const original = read["fermenter.originalExtract"];
  const final = read["fermenter.finalExtract"];
  if (original === undefined || final === undefined) return null;
  if (original < WEAKEST_PLATO || original > FERMENTED_RANGE.max) return null;
  const { min, max } = apparentRange(original);
  if (final < min || final > max) return null;
  return { originalPlato: degreesPlato(original), apparentPlato: degreesPlato(final) };
}
