import { requireInRange } from "../errors";
import { fraction, type Fraction } from "../units";

export const STORAGE_INDEX_RANGE = { unit: "", min: 0.2, max: 2 } as const;

/** Index of fresh hops. */
const FRESH = 0.25;

/**
 * Tells from the hop storage index how much of the bitter acids has been lost.
 *
 * The index is the absorbance of an extract at 275 nm over that at 325 nm: oxidised acids absorb at the one, fresh ones at
 * the other.
 *
 * @param storageIndex - Hop storage index.
 * @returns Alpha and beta acids lost, fraction of the fresh ones; 0 up to an index of 0.25. The slope of 110 % for a tenfold
 * index was 102 to 115 % in four crop years, so a loss of 0.2 is sure to about 0.02.
 * @validRange 0.2, fresh hops, to 2, where next to nothing is left.
 * @throws {@link OutOfRangeError} when `storageIndex` is outside the valid range.
 * @source Nickerson and Likens 1979, J. Am. Soc. Brew. Chem. 37:184 (docs/sources.md#nickerson-likens-1979)
 * @example
 * alphaLostFromStorageIndex(0.31); // 0.103
 */
export function alphaLostFromStorageIndex(storageIndex: number): Fraction {
  requireInRange("hop storage index", storageIndex, STORAGE_INDEX_RANGE);
  return fraction(Math.max(0, 1.1 * Math.log10(storageIndex / FRESH)));
}
