import { OutOfRangeError, requireInRange } from "../errors";
import { degreesPlato, kilograms, type DegreesPlato, type Kilograms } from "../units";

/**
 * Finds the strength of the first wort: dissolved extract over everything liquid in the mash.
 *
 * The water of the malt counts as solvent; popular forms leave it out.
 *
 * @param a.water - Mash water, kg.
 * @param a.maltWater - Moisture that the grist brings, kg.
 * @param a.dissolved - Extract in solution, kg.
 * @returns Extract of the first wort, °P.
 * @validRange At least some water; up to 60 °P, past which no mash flows.
 * @throws {@link OutOfRangeError} when a mass is negative or the wort would be stronger than 60 °P.
 * @source Mass balance after Narziß (docs/sources.md#narziss)
 * @example
 * firstWortPlato({ water: kilograms(3), maltWater: kilograms(0), dissolved: kilograms(0.8) }); // 21.05
 */
export function firstWortPlato(a: {
  readonly water: Kilograms;
  readonly maltWater: Kilograms;
  readonly dissolved: Kilograms;
}): DegreesPlato {
  requireInRange("mash water", a.water, kilograms.range);
  requireInRange("malt moisture", a.maltWater, kilograms.range);
  requireInRange("dissolved extract", a.dissolved, kilograms.range);
  const wortKg = a.water + a.maltWater + a.dissolved;
  if (wortKg === 0) return degreesPlato(0);
  const plato = (100 * a.dissolved) / wortKg;
  if (plato > 60) throw new OutOfRangeError("first wort", plato, { unit: "°P", min: 0, max: 60 });
  return degreesPlato(plato);
}
