import { fraction, type Fraction } from "../units";
import { requireAttenuation, type Extracts } from "./extracts";
import { realExtract } from "./real-extract";

/**
 * Gives the share of the extract that has really fermented.
 *
 * @param extracts - Original and apparent extract, °P.
 * @returns Real attenuation as a fraction, about 0.82 of the apparent one.
 * @validRange Original extract 0.1 to 35 °P, apparent extract from −0.2207 times the original, where nothing is left, up to it.
 * @throws {@link OutOfRangeError} when an extract is outside the valid range.
 * @source Balling 1865 (docs/sources.md#balling-1865)
 * @example
 * realAttenuation({ originalPlato: degreesPlato(12), apparentPlato: degreesPlato(3) }); // 0.614
 */
export function realAttenuation(extracts: Extracts): Fraction {
  requireAttenuation(extracts);
  // An unfermented wort would give −1e-16 here.
  return fraction(Math.max(0, 1 - realExtract(extracts) / extracts.originalPlato));
}
