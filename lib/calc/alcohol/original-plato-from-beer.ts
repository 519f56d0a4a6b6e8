import { requireInRange } from "../errors";
import { degreesPlato, type DegreesPlato, type Percent } from "../units";

/** Alcohol and extract of beers that the equation was made for, and of the strongest ones. */
export const BEER_RANGE = {
  alcoholByWeight: { unit: "%", min: 0, max: 17 },
  realExtract: { unit: "°P", min: 0, max: 25 },
} as const;

/**
 * Finds how strong the wort of a beer was from what an analysis of the beer says (Balling).
 *
 * @param a.alcoholByWeight - Alcohol, % of the mass of the beer.
 * @param a.realExtract - Real extract, °P: what is left when the alcohol is driven off and replaced by water.
 * @returns Original extract, °P.
 * @validRange Alcohol 0 to 17 % by mass, real extract 0 to 25 °P.
 * @throws {@link OutOfRangeError} when alcohol or extract is outside the valid range.
 * @source Balling 1865 (docs/sources.md#balling-1865)
 * @example
 * originalPlatoFromBeer({ alcoholByWeight: percent(3.803), realExtract: degreesPlato(4.627) }); // 12.00
 */
export function originalPlatoFromBeer({
  alcoholByWeight,
  realExtract,
}: {
  readonly alcoholByWeight: Percent;
  readonly realExtract: DegreesPlato;
}): DegreesPlato {
  requireInRange("alcohol by weight", alcoholByWeight, BEER_RANGE.alcoholByWeight);
  requireInRange("real extract", realExtract, BEER_RANGE.realExtract);
  return degreesPlato((100 * (2.0665 * alcoholByWeight + realExtract)) / (100 + 1.0665 * alcoholByWeight));
}
