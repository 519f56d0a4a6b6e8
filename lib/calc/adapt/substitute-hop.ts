import type { Intention } from "./intention";
import { intentionOf } from "./intention-of";
import type { HopStock, Original, UnfitReason, Unlikeness } from "./substitution";

/** One per cent is added to alpha acids before they are divided, so that a hop without any has a place. */
const ONE_PER_CENT = 0.01;

/**
 * Puts a candidate in the place of a hop addition: by its bitterness, or by its dose where it gives none.
 *
 * @returns The intention; or that the candidate cannot give bitterness.
 */
export function placeHop(original: Original, index: number, candidate: HopStock): Intention | UnfitReason {
  const intention = intentionOf(original);
  const hop = intention.hops[index];
  if (hop === undefined || (hop.ibu !== null && candidate.alpha === 0)) return "no-alpha";
  const { name, alpha } = candidate;
  return { ...intention, hops: intention.hops.map((each) => (each === hop ? { ...each, name, alpha } : each)) };
}

/**
 * Tells how unlike a hop its candidate is: by the ratio of the alpha acids, which is about that of the weights. Alpha
 * acids of dry hops count nothing; aroma is no arithmetic.
 *
 * @returns The weighed difference.
 */
export function unlikeHop({ recipe }: Original, index: number, { alpha }: HopStock): Unlikeness {
  const hop = recipe.hops[index];
  const counts = hop !== undefined && hop.use !== "dry";
  const ratio = (alpha + ONE_PER_CENT) / ((hop?.alpha ?? alpha) + ONE_PER_CENT);
  return {
    extract: 0,
    colour: 0,
    beerColour: 0,
    mashPh: 0,
    attenuation: 0,
    alpha: counts ? Math.abs(Math.log(ratio)) : 0,
  };
}
