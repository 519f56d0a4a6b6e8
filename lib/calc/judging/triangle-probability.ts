import { forcedChoiceResult, GUESSING, type ForcedChoiceResult } from "./forced-choice";

/**
 * Weighs the answers of a triangle test against guessing, and estimates how many can tell the beers apart.
 *
 * @param a.n - Number of assessors, each answering once.
 * @param a.correct - How many found the odd glass.
 * @returns Probability of as many by guessing, and the share of discriminators 1.5 correct/n − 0.5 with exact limits that
 * hold it in at least 80 of 100 cases.
 * @validRange 1 to 10 000 assessors.
 * @throws {@link OutOfRangeError} when a number is outside its range or not whole.
 * @source ISO 4120:2021 (docs/sources.md#iso-4120-2021), limits of Clopper and Pearson 1934 (docs/sources.md#clopper-pearson-1934)
 * @example
 * triangleProbability({ n: 12, correct: 7 }).p; // 0.0664
 */
export function triangleProbability(a: { readonly n: number; readonly correct: number }): ForcedChoiceResult {
  return forcedChoiceResult(a, GUESSING.triangle);
}
