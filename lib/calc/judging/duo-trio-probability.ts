import { forcedChoiceResult, GUESSING, type ForcedChoiceResult } from "./forced-choice";

/**
 * Weighs the answers of a duo-trio test against guessing, and estimates how many can tell the beers apart.
 *
 * @param a.n - Number of assessors, each answering once.
 * @param a.correct - How many matched the first glass.
 * @returns Probability of as many by guessing, and the share of discriminators 2 correct/n − 1 with exact limits that hold
 * it in at least 80 of 100 cases.
 * @validRange 1 to 10 000 assessors.
 * @throws {@link OutOfRangeError} when a number is outside its range or not whole.
 * @source ISO 10399:2017 (docs/sources.md#iso-10399-2017), limits of Clopper and Pearson 1934 (docs/sources.md#clopper-pearson-1934)
 * @example
 * duoTrioProbability({ n: 20, correct: 14 }).p; // 0.0577
 */
export function duoTrioProbability(a: { readonly n: number; readonly correct: number }): ForcedChoiceResult {
  return forcedChoiceResult(a, GUESSING["duo-trio"]);
}
