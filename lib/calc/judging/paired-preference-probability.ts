import { binomialUpperTail } from "../statistics";
import { ASSESSORS_RANGE, requireCount } from "./forced-choice";
import { proportionInterval } from "./proportion-interval";

export interface PairedPreference {
  /** Probability of at least as lopsided a count, either way, where nobody has a preference. */
  readonly p: number;
  readonly proportion: number;
  readonly low80: number;
  readonly high80: number;
}

/**
 * Weighs how many prefer one of two beers, when either might have won.
 *
 * @param a.n - Number of assessors; each must choose.
 * @param a.preferring - How many prefer the first beer.
 * @returns Two-sided probability, and the share who prefer the first with exact limits that hold it in at least 80 of 100
 * cases.
 * @validRange 1 to 10 000 assessors.
 * @throws {@link OutOfRangeError} when a number is outside its range or not whole.
 * @source ISO 5495:2005 (docs/sources.md#iso-5495-2005), limits of Clopper and Pearson 1934 (docs/sources.md#clopper-pearson-1934)
 * @example
 * pairedPreferenceProbability({ n: 20, preferring: 15 }).p; // 0.0414
 */
export function pairedPreferenceProbability(a: { readonly n: number; readonly preferring: number }): PairedPreference {
  const n = requireCount("number of assessors", a.n, ASSESSORS_RANGE);
  const preferring = requireCount("number preferring", a.preferring, { unit: "", min: 0, max: n });
  const majority = Math.max(preferring, n - preferring);
  return {
    p: Math.min(1, 2 * binomialUpperTail({ n, atLeast: majority, p: 0.5 })),
    proportion: preferring / n,
    ...proportionInterval({ n, count: preferring }),
  };
}
