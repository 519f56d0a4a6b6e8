import { degreesPlato, type DegreesPlato } from "../units";
import { requireExtracts, type Extracts } from "./extracts";

/**
 * Finds the extract that is really left in beer, where the hydrometer reads low because of the alcohol (Balling).
 *
 * @param extracts - Original and apparent extract, °P.
 * @returns Real extract, °P.
 * @validRange Original extract 0 to 35 °P, apparent extract 0 to the original.
 * @throws {@link OutOfRangeError} when an extract is outside the valid range.
 * @source Balling 1865, attenuation quotient in its usual linear form (docs/sources.md#balling-1865)
 * @example
 * realExtract({ originalPlato: degreesPlato(12), apparentPlato: degreesPlato(3) }); // 4.627
 */
export function realExtract(extracts: Extracts): DegreesPlato {
  requireExtracts(extracts);
  return degreesPlato(0.1808 * extracts.originalPlato + 0.8192 * extracts.apparentPlato);
}
