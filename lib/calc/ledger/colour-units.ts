import { POUNDS_PER_GALLON } from "../colour";
import type { GristSums } from "./grist-sums";

/**
 * Malt colour units of all that was mashed and boiled.
 *
 * @returns Colour units, °L·lb/US gal.
 * @source Definition (docs/sources.md#morey-1995)
 */
export function colourUnitsOf(sums: GristSums, litres: number): number {
  return (sums.colourKgLovibond * POUNDS_PER_GALLON) / litres;
}
