import { chiSquaredQuantile } from "../statistics";
import type { KettlePrior } from "./kettle-prior";
import { posterior, type Posterior } from "./posterior";
import type { WeighedBrew } from "./weighed-brew";

/** A brew that is farther off than this is rarely only unlucky. */
const RARE = 0.01;
const TURNS = 6;

/**
 * Adds brews up, of which one that is farther off than chance allows counts less, in proportion to its distance.
 *
 * @returns How much each counts, and what they give together.
 * @source Huber 1964 (docs/sources.md#huber-1964)
 */
export function reweighed(
  prior: KettlePrior,
  brews: readonly WeighedBrew[],
): { readonly weights: readonly number[]; readonly found: Posterior } {
  let weights: readonly number[] = brews.map(() => 1);
  let found = posterior(prior, brews);
  for (let turn = 0; turn < TURNS; turn++) {
    weights = brews.map(({ misfitAt, readings }) => {
      if (readings === 0) return 1;
      return Math.min(1, chiSquaredQuantile({ p: 1 - RARE, df: readings }) / misfitAt(found.mean));
    });
    if (weights.every((weight) => weight === 1)) break;
    found = posterior(prior, brews, weights);
  }
  return { weights, found };
}
