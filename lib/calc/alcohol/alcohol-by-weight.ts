import { percent, type Percent } from "../units";
import type { Extracts } from "./extracts";
import { realExtract } from "./real-extract";

/**
 * Finds alcohol by mass from the extracts before and after fermentation (Balling).
 *
 * 2.0665 g of extract give 1 g of alcohol; the rest leaves as carbon dioxide or becomes yeast.
 *
 * @param extracts - Original and apparent extract, °P.
 * @returns Alcohol, % of the mass of the beer.
 * @validRange Original extract 0 to 35 °P, apparent extract from −0.2207 times the original, where nothing is left, up to it.
 * @throws {@link OutOfRangeError} when an extract is outside the valid range.
 * @source Balling 1865 (docs/sources.md#balling-1865)
 * @example
 * alcoholByWeight({ originalPlato: degreesPlato(12), apparentPlato: degreesPlato(3) }); // 3.803
 */
export function alcoholByWeight(extracts: Extracts): Percent {
  const fermented = Math.max(0, extracts.originalPlato - realExtract(extracts));
  return percent(fermented / (2.0665 - 0.010665 * extracts.originalPlato));
}
