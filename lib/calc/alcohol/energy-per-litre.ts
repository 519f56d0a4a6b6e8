import { platoToSpecificGravity } from "../gravity";
import { kilocaloriesPerLitre, type KilocaloriesPerLitre } from "../units";
import { alcoholByWeight } from "./alcohol-by-weight";
import type { Extracts } from "./extracts";
import { realExtract } from "./real-extract";

/** Minerals among the extract of beer, % by mass: no food value. */
const ASH = 0.1;

/**
 * Finds the food energy of beer: 6.9 kcal in a gram of alcohol, 4.0 in a gram of extract.
 *
 * @param extracts - Original and apparent extract, °P.
 * @returns Energy, kcal/L.
 * @validRange Original extract 0 to 35 °P, apparent extract from −0.2207 times the original, where nothing is left, up to it.
 * @throws {@link OutOfRangeError} when an extract is outside the valid range.
 * @source ASBC Beer-33, ash taken as 0.1 % (docs/sources.md#asbc-beer-33)
 * @example
 * energyPerLitre({ originalPlato: degreesPlato(12), apparentPlato: degreesPlato(3) }); // 449
 */
export function energyPerLitre(extracts: Extracts): KilocaloriesPerLitre {
  const extract = Math.max(0, realExtract(extracts) - ASH);
  const kcalPer100G = 6.9 * alcoholByWeight(extracts) + 4 * extract;
  return kilocaloriesPerLitre(10 * kcalPer100G * platoToSpecificGravity(extracts.apparentPlato));
}
