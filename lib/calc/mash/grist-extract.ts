import { requireInRange } from "../errors";
import { fraction, kilograms, type Fraction, type Kilograms } from "../units";

/**
 * Gives the extract that a fermentable holds: dry mass times its laboratory yield.
 *
 * @param a.kg - Mass as weighed, kg.
 * @param a.extract - Extract of the dry substance, fine grind, fraction.
 * @param a.moisture - Water in the mass as weighed, fraction.
 * @returns Extract, kg.
 * @validRange Fractions from 0 to 1.
 * @throws {@link OutOfRangeError} when a fraction or the mass is outside its range.
 * @source Definition of the dry-basis yield (docs/sources.md#mass-balance)
 * @example
 * gristExtract({ kg: kilograms(10), extract: fraction(0.8), moisture: fraction(0.04) }); // 7.68
 */
export function gristExtract(a: {
  readonly kg: Kilograms;
  readonly extract: Fraction;
  readonly moisture: Fraction;
}): Kilograms {
  requireInRange("fermentable", a.kg, kilograms.range);
  requireInRange("extract of the dry substance", a.extract, fraction.range);
  requireInRange("moisture", a.moisture, fraction.range);
  return kilograms(a.kg * (1 - a.moisture) * a.extract);
}
