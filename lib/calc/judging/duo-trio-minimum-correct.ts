import { fewestCorrect, GUESSING } from "./forced-choice";

/**
 * Finds how many correct answers of a duo-trio test reject guessing: which of two glasses is the same as the first?
 *
 * @param a.n - Number of assessors, each answering once.
 * @param a.alpha - Risk of seeing a difference where there is none; 0.05 is usual.
 * @returns Fewest correct answers.
 * @validRange Up to 10 000 assessors, enough of them for alpha; alpha 0.000001 to 0.5.
 * @throws {@link OutOfRangeError} when a number is outside its range or not whole: four assessors never reach 5 %.
 * @source Exact binomial of 1/2, as in ISO 10399:2017 (docs/sources.md#iso-10399-2017)
 * @example
 * duoTrioMinimumCorrect({ n: 24, alpha: 0.05 }); // 17
 */
export function duoTrioMinimumCorrect(a: { readonly n: number; readonly alpha: number }): number {
  return fewestCorrect(a, GUESSING["duo-trio"]);
}
