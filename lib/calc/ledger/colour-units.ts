import type { GristSums } from "./grist-sums";

/** Pounds per kilogram over US gallons per litre: malt colour units are °L·lb/US gal. */
const LB_PER_KG_OVER_GAL_PER_L = 3.785411784 / 0.45359237;

/**
 * Malt colour units of all that was mashed and boiled.
 *
 * @returns Colour units, °L·lb/US gal.
 * @source Definition (docs/sources.md#morey-1995)
 */
export function colourUnitsOf(sums: GristSums, litres: number): number {
  return (sums.colourKgLovibond * LB_PER_KG_OVER_GAL_PER_L) / litres;
}
