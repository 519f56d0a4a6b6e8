import { OutOfRangeError, requireInRange, type Range } from "../errors";
import { binomialUpperTail } from "../statistics";
import { proportionInterval } from "./proportion-interval";

/** Tests in which an assessor must choose, and the chance to choose right by guessing. */
export const GUESSING = { triangle: 1 / 3, "duo-trio": 1 / 2 } as const;

export type ForcedChoice = keyof typeof GUESSING;

export const ASSESSORS_RANGE = { unit: "", min: 1, max: 10_000 } as const;
export const ALPHA_RANGE = { unit: "", min: 1e-6, max: 0.5 } as const;

/** A probability that equals alpha but for its last bits still rejects guessing. */
const ROUNDING = 1 + 1e-12;

export interface ForcedChoiceResult {
  /** Probability of at least as many correct answers by guessing alone. */
  readonly p: number;
  readonly proportionCorrect: number;
  /** Estimated share of assessors who can tell the beers apart; 0 where fewer were right than guess right. */
  readonly proportionOfDiscriminators: number;
  readonly low80: number;
  readonly high80: number;
}

/**
 * Passes a count through when it is whole and in its range.
 *
 * @returns The count unchanged.
 * @throws {@link OutOfRangeError} when it is not.
 */
export function requireCount(quantity: string, value: number, range: Range): number {
  requireInRange(quantity, value, range);
  if (!Number.isInteger(value)) throw new OutOfRangeError(quantity, value, range);
  return value;
}

/**
 * Finds the fewest correct answers whose probability under guessing is no more than alpha.
 *
 * @returns Fewest correct answers, at least 1.
 * @throws {@link OutOfRangeError} when alpha is outside its range or so few assessors could not reject guessing at all.
 */
export function fewestCorrect({ n, alpha }: { n: number; alpha: number }, guessing: number): number {
  requireInRange("alpha", alpha, ALPHA_RANGE);
  const most = alpha * ROUNDING;
  let fewestAssessors = 1;
  while (guessing ** fewestAssessors > most) fewestAssessors++;
  requireCount("number of assessors", n, { ...ASSESSORS_RANGE, min: fewestAssessors });
  // The tail falls as more are asked for: halve the span in which it first passes alpha.
  let tooFew = 0;
  let enough = n;
  while (enough - tooFew > 1) {
    const middle = Math.floor((tooFew + enough) / 2);
    if (binomialUpperTail({ n, atLeast: middle, p: guessing }) <= most) enough = middle;
    else tooFew = middle;
  }
  return enough;
}

/**
 * Weighs correct answers against guessing.
 *
 * Of those who cannot tell, a share guesses right, so the share who can is (correct − chance) / (1 − chance), and the
 * limits of the one give those of the other.
 *
 * @returns Probability by guessing, and the share of discriminators with limits.
 * @throws {@link OutOfRangeError} when a number is outside its range or not whole.
 */
export function forcedChoiceResult(a: { n: number; correct: number }, guessing: number): ForcedChoiceResult {
  const n = requireCount("number of assessors", a.n, ASSESSORS_RANGE);
  const correct = requireCount("correct answers", a.correct, { unit: "", min: 0, max: n });
  const discriminators = (proportion: number): number => Math.max(0, (proportion - guessing) / (1 - guessing));
  const { low80, high80 } = proportionInterval({ n, count: correct });
  return {
    p: binomialUpperTail({ n, atLeast: correct, p: guessing }),
    proportionCorrect: correct / n,
    proportionOfDiscriminators: discriminators(correct / n),
    low80: discriminators(low80),
    high80: discriminators(high80),
  };
}
