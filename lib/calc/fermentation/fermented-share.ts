import { apparentRange } from "../alcohol";
import { requireInRange } from "../errors";
import { fraction, type DegreesPlato, type Fraction } from "../units";
import { LOGGED_RANGE } from "./fermentation-curve";

/** A fall shorter than this has no parts that could be told, °P. */
const SHORTEST_FALL = 0.5;

/**
 * Tells how far a fermentation has come: the share of its whole fall that is behind it.
 *
 * @param a.originalPlato - Original extract, °P.
 * @param a.nowPlato - Apparent extract now, °P.
 * @param a.finalPlato - Apparent extract where it ends, °P: of the fit, or as predicted.
 * @returns Share, 0 before it begins and 1 at its end or past it: a reading scatters around both.
 * @validRange Original extract 1 to 35 °P, an end at least 0.5 °P below it.
 * @throws {@link OutOfRangeError} when an extract is outside its range.
 * @source Definition (docs/sources.md#balling-1865)
 * @example
 * fermentedShare({ originalPlato: degreesPlato(12), nowPlato: degreesPlato(4), finalPlato: degreesPlato(3) }); // 0.889
 */
export function fermentedShare({
  originalPlato,
  nowPlato,
  finalPlato,
}: {
  readonly originalPlato: DegreesPlato;
  readonly nowPlato: DegreesPlato;
  readonly finalPlato: DegreesPlato;
}): Fraction {
  requireInRange("original extract", originalPlato, LOGGED_RANGE.original);
  requireInRange("extract now", nowPlato, LOGGED_RANGE.plato);
  const ends = { ...apparentRange(originalPlato), max: originalPlato - SHORTEST_FALL };
  requireInRange("final extract", finalPlato, ends);
  const share = (originalPlato - nowPlato) / (originalPlato - finalPlato);
  return fraction(Math.min(1, Math.max(0, share)));
}
