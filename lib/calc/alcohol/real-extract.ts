import { degreesPlato, type DegreesPlato } from "../units";
import { REAL_SHARE, requireExtracts, type Extracts } from "./extracts";

/**
 * Finds the extract that is really left in beer, where the hydrometer reads low because of the alcohol (Balling).
 *
 * @param extracts - Original and apparent extract, °P.
 * @returns Real extract, °P.
 * @validRange Original extract 0 to 35 °P, apparent extract from −0.2207 times the original, where nothing is left, up to it.
 * @throws {@link OutOfRangeError} when an extract is outside the valid range.
 * @source Balling 1865, attenuation quotient in its usual linear form (docs/sources.md#balling-1865)
 * @example
 * realExtract({ originalPlato: degreesPlato(12), apparentPlato: degreesPlato(3) }); // 4.627
 */
export function realExtract(extracts: Extracts): DegreesPlato {
  requireExtracts(extracts);
  const real = (1 - REAL_SHARE) * extracts.originalPlato + REAL_SHARE * extracts.apparentPlato;
  // Where nothing is left this is zero but for the last digit.
  return degreesPlato(Math.max(0, real));
}
