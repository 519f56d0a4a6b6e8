import { requireInRange } from "../errors";
import { milligramsPerLitre } from "../units";
import { IONS, type Ions } from "./ions";

/**
 * Checks every ion of a water.
 *
 * @throws {@link OutOfRangeError} when a concentration is outside 0 to 10 000 mg/L.
 * @example
 * requireIons(tapWater);
 */
export function requireIons(ions: Ions): void {
  for (const ion of IONS) requireInRange(ion, ions[ion], milligramsPerLitre.range);
}
