import { attenuation, type Fraction } from "../units";
import { requireAttenuation, type Extracts } from "./extracts";

/**
 * Gives the share of the extract that seems to have fermented when the beer is read with a hydrometer.
 *
 * @param extracts - Original and apparent extract, °P.
 * @returns Apparent attenuation as a fraction; above 1 for beer lighter than water.
 * @validRange Original extract 0.1 to 35 °P, apparent extract from −0.2207 times the original, where nothing is left, up to it.
 * @throws {@link OutOfRangeError} when an extract is outside the valid range.
 * @source Definition (docs/sources.md#balling-1865)
 * @example
 * apparentAttenuation({ originalPlato: degreesPlato(12), apparentPlato: degreesPlato(3) }); // 0.75
 */
export function apparentAttenuation(extracts: Extracts): Fraction {
  requireAttenuation(extracts);
  return attenuation(1 - extracts.apparentPlato / extracts.originalPlato);
}
