import { requireInRange } from "../errors";
import { binomialUpperTail } from "../statistics";
import { ASSESSORS_RANGE, GUESSING, type ForcedChoice } from "./forced-choice";

export const PLANNING_RANGE = {
  proportionOfDiscriminators: { unit: "", min: 0.05, max: 1 },
  risk: { unit: "", min: 0.001, max: 0.5 },
} as const;

/** There are three glasses, or two to choose from. */
const GUESSING_RANGE = { unit: "", min: 1 / 3, max: 1 / 2 } as const;

/** A risk that is met but for its last bits is met. */
const ROUNDING = 1e-12;

export type RequiredAssessors =
  | {
      readonly ok: true;
      readonly assessors: number;
      readonly minimumCorrect: number;
      /** What the risks come to with whole numbers of answers. */
      readonly alpha: number;
      readonly beta: number;
    }
  | { readonly ok: false; readonly reason: "more-than-10000-assessors"; readonly beta: number };

/**
 * Finds how many assessors a difference test needs to find a difference that a share of them can tell.
 *
 * Exact: the smallest number at which the fewest correct answers that reject guessing come out often enough. The power goes
 * up and down as the number of assessors grows, so a few more may again be a little short.
 *
 * @param a.proportionOfDiscriminators - Share of assessors who can tell the beers apart, of which one would want to know.
 * @param a.alpha - Risk of seeing a difference where there is none.
 * @param a.beta - Risk of missing it where that share can tell.
 * @param a.test - Triangle or duo-trio; the triangle needs fewer assessors and more beer.
 * @returns Number of assessors, fewest correct answers and the two risks; or that 10 000 would not do, and beta with them.
 * @validRange Share 0.05 to 1, risks 0.001 to 0.5.
 * @throws {@link OutOfRangeError} when share or risk is outside its range or the test is neither of the two.
 * @source Exact binomial, as in ISO 4120:2021 and ISO 10399:2017 (docs/sources.md#iso-4120-2021, docs/sources.md#iso-10399-2017)
 * @example
 * requiredAssessors({ proportionOfDiscriminators: 0.5, alpha: 0.05, beta: 0.05, test: "triangle" }); // 23 assessors, 12 correct
 */
export function requiredAssessors(a: {
  readonly proportionOfDiscriminators: number;
  readonly alpha: number;
  readonly beta: number;
  readonly test: ForcedChoice;
}): RequiredAssessors {
  const { proportionOfDiscriminators, alpha, beta } = a;
  requireInRange("share of discriminators", proportionOfDiscriminators, PLANNING_RANGE.proportionOfDiscriminators);
  requireInRange("alpha", alpha, PLANNING_RANGE.risk);
  requireInRange("beta", beta, PLANNING_RANGE.risk);
  // A caller without types may name another test, whose chance is then no number.
  const guessing = requireInRange("chance to guess right", GUESSING[a.test], GUESSING_RANGE);
  const right = proportionOfDiscriminators + (1 - proportionOfDiscriminators) * guessing;

  let correct = 1;
  let missed = 1;
  for (let n = 1; n <= ASSESSORS_RANGE.max; n++) {
    // With one assessor more the fewest correct answers stay or grow by one.
    while (correct <= n && binomialUpperTail({ n, atLeast: correct, p: guessing }) > alpha * (1 + ROUNDING)) correct++;
    if (correct > n) continue;
    missed = 1 - binomialUpperTail({ n, atLeast: correct, p: right });
    if (missed > beta + ROUNDING) continue;
    const falseAlarm = binomialUpperTail({ n, atLeast: correct, p: guessing });
    return { ok: true, assessors: n, minimumCorrect: correct, alpha: falseAlarm, beta: Math.max(0, missed) };
  }
  return { ok: false, reason: "more-than-10000-assessors", beta: missed };
}
