import { moreySrm } from "../colour";
import { ebcFromSrm, srm } from "../units";
import type { GristSums } from "./grist-sums";

/** Pounds per kilogram over US gallons per litre: malt colour units are °L·lb/US gal. */
const LB_PER_KG_OVER_GAL_PER_L = 3.785411784 / 0.45359237;

/**
 * Colour of the beer from all that was mashed and boiled, by the relation of Morey.
 *
 * @returns Colour, EBC.
 * @source docs/sources.md#morey-1995
 */
export function colourOf(sums: GristSums, litres: number): number {
  const mcu = (sums.colourKgLovibond * LB_PER_KG_OVER_GAL_PER_L) / litres;
  return ebcFromSrm(srm(moreySrm(mcu)));
}
