import { platoToSpecificGravity } from "../gravity";
import { percent, type Percent } from "../units";
import { alcoholByWeight } from "./alcohol-by-weight";
import type { Extracts } from "./extracts";

/** Specific gravity 20/20 of pure ethanol: 789.24 over 998.20 kg/m³. */
const ETHANOL_SG = 0.7907;

/**
 * Finds alcohol by volume at 20 °C from the extracts before and after fermentation.
 *
 * @param extracts - Original and apparent extract, °P.
 * @returns Alcohol, % by volume.
 * @validRange Original extract 0 to 35 °P, apparent extract from −0.2207 times the original, where nothing is left, up to it.
 * @throws {@link OutOfRangeError} when an extract is outside the valid range.
 * @source Balling 1865 (docs/sources.md#balling-1865), density of ethanol OIML R 22 (docs/sources.md#oiml-r22)
 * @example
 * alcoholByVolume({ originalPlato: degreesPlato(12), apparentPlato: degreesPlato(3) }); // 4.87
 */
export function alcoholByVolume(extracts: Extracts): Percent {
  return percent((alcoholByWeight(extracts) * platoToSpecificGravity(extracts.apparentPlato)) / ETHANOL_SG);
}
