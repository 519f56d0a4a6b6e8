import { requireInRange } from "../errors";
import { grams as gramsOf, gramsPerLitre, type Grams, type GramsPerLitre, type Litres } from "../units";

/** Least beer that a rate is worked out for. */
export const DRY_HOPPED_RANGE = { unit: "L", min: 0.1, max: 100_000 } as const;

/**
 * Gives the dry hops for each litre of beer, by which dry hopping carries over from kettle to kettle.
 *
 * Dry hops isomerise nothing; what they change of the measured bitterness is not counted.
 *
 * @param a.grams - Dry hops, g.
 * @param a.litres - Beer, L.
 * @returns Rate, g/L; 2 to 10 are common practice.
 * @validRange 0.1 to 100 000 L, rates up to 1000 g/L.
 * @throws {@link OutOfRangeError} when hops, beer or the rate are outside their range.
 * @source Definition; the usual rates are common practice (docs/sources.md#trade-practice)
 * @example
 * dryHopRate({ grams: grams(100), litres: litres(20) }); // 5
 */
export function dryHopRate({ grams, litres }: { readonly grams: Grams; readonly litres: Litres }): GramsPerLitre {
  requireInRange("hops", grams, gramsOf.range);
  requireInRange("beer", litres, DRY_HOPPED_RANGE);
  return gramsPerLitre(grams / litres);
}
