import { requireInRange } from "../errors";
import {
  billionCells,
  litres as litresOf,
  millionPerMlPlato as pitchRate,
  type BillionCells,
  type DegreesPlato,
  type Litres,
  type MillionPerMlPlato,
} from "../units";

/** The strongest wort that the rates of practice are about. */
export const PITCHED_RANGE = { unit: "°P", min: 0, max: 35 } as const;

/**
 * Counts the viable cells that a wort needs.
 *
 * @param a.litres - Wort, L.
 * @param a.plato - Its strength, °P.
 * @param a.millionPerMlPlato - Million cells for each mL and °P: 0.75 for ales and 1.5 for lagers are common practice.
 * @returns Viable cells, 10⁹.
 * @validRange 0 to 35 °P, up to 10 million for each mL and °P.
 * @throws {@link OutOfRangeError} when an amount is outside its range.
 * @source Definition of the rate; Fix and Fix 1997 for its size (docs/sources.md#fix-fix-1997)
 * @example
 * cellsToPitch({ litres: litres(20), plato: degreesPlato(12), millionPerMlPlato: millionPerMlPlato(0.75) }); // 180
 */
export function cellsToPitch({
  litres,
  plato,
  millionPerMlPlato,
}: {
  readonly litres: Litres;
  readonly plato: DegreesPlato;
  readonly millionPerMlPlato: MillionPerMlPlato;
}): BillionCells {
  requireInRange("volume", litres, litresOf.range);
  requireInRange("extract", plato, PITCHED_RANGE);
  requireInRange("pitch rate", millionPerMlPlato, pitchRate.range);
  // A thousand mL in a litre against a thousand million in 10⁹.
  return billionCells(millionPerMlPlato * litres * plato);
}
