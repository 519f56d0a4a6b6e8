import { fewestCorrect, GUESSING } from "./forced-choice";

/**
 * Finds how many correct answers of a triangle test reject guessing: three glasses, two alike, which is the odd one?
 *
 * @param a.n - Number of assessors, each answering once.
 * @param a.alpha - Risk of seeing a difference where there is none; 0.05 is usual.
 * @returns Fewest correct answers.
 * @validRange Up to 10 000 assessors, enough of them for alpha; alpha 0.000001 to 0.5.
 * @throws {@link OutOfRangeError} when a number is outside its range or not whole: two assessors never reach 5 %.
 * @source Exact binomial of 1/3, as in ISO 4120:2021 (docs/sources.md#iso-4120-2021)
 * @example
 * triangleMinimumCorrect({ n: 24, alpha: 0.05 }); // 13
 */
export function triangleMinimumCorrect(a: { readonly n: number; readonly alpha: number }): number {
  return fewestCorrect(a, GUESSING.triangle);
}
