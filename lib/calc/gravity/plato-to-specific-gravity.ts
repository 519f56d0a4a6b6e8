import { requireInRange } from "../errors";
import { celsius, specificGravity, type DegreesPlato, type SpecificGravity } from "../units";
import { EXTRACT_RANGE } from "./extract-range";
import { densityRise } from "./sucrose-density";
import { waterDensity } from "./water-density";

/** Air that a weighing in air leaves out, kg/L: brewing tables of specific gravity are apparent, not in vacuum. */
const AIR = 0.0012;

/** Apparent density of water at 20 °C, the divisor of SG 20/20, kg/L. */
export const APPARENT_WATER_20 = waterDensity(celsius(20)) - AIR;

/**
 * Converts extract by mass to specific gravity, 20 °C over water at 20 °C.
 *
 * From the densities on which the printed tables rest rather than by a fit to the tables: the usual fits drift above
 * 25 °P (by 0.00014 at 35 °P), and this way volumes, masses and gravities of one wort agree. Below zero no solution of sugar
 * exists: there the curve is carried on, and so defines the apparent extract of beer lighter than water. It stays within
 * 0.01 °P of the cubic that the ASBC fitted to its tables.
 *
 * @param plato - Extract, °P: grams of extract in 100 g of wort; apparent extract of beer.
 * @returns Apparent specific gravity 20/20, within 0.00002 of the tables.
 * @validRange −9 to 35 °P.
 * @throws {@link OutOfRangeError} when `plato` is outside the valid range.
 * @source NBS Circular C440 1942, table 113 (docs/sources.md#nbs-440-1942), as the ASBC tables (docs/sources.md#asbc-tables)
 * @example
 * platoToSpecificGravity(degreesPlato(10)); // 1.04003
 */
export function platoToSpecificGravity(plato: DegreesPlato): SpecificGravity {
  requireInRange("extract", plato, EXTRACT_RANGE);
  return specificGravity(1 + densityRise(plato) / APPARENT_WATER_20);
}
