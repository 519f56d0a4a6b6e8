import type { KettlePrior } from "./kettle-prior";
import { posterior } from "./posterior";
import type { WeighedBrew } from "./weighed-brew";

/** A brew tells of a figure where it alone takes this share off its variance. */
export const TELLING = 0.02;

/**
 * Tells of which figures a brew says something, beside what was known before.
 *
 * @returns For each figure of the prior.
 */
export function tellsOf(prior: KettlePrior, brew: WeighedBrew): boolean[] {
  const size = prior.places.length;
  const { variance } = prior;
  const after = posterior(prior, [brew]).covariance;
  return prior.places.map((_, k) => (after[k * size + k] ?? 1) < (1 - TELLING) * (variance[k] ?? 1));
}
