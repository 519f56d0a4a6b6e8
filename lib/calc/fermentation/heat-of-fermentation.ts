import { requireInRange } from "../errors";
import { kilograms, kilojoules, type Kilograms, type Kilojoules } from "../units";

/** Heat set free by a kilogram of extract, kJ: 140 kcal. */
const KILOJOULES_PER_KILOGRAM = 587;

/**
 * Gives the heat that fermentation sets free, which the cooling has to carry away.
 *
 * @param extract - Extract that ferments, kg: real, not apparent.
 * @returns Heat, kJ, within about 5 %.
 * @validRange 0 to 100 000 kg.
 * @throws {@link OutOfRangeError} when `extract` is outside the valid range.
 * @source Narziß and Back, Die Bierbrauerei, from memory (docs/sources.md#narziss); enthalpies of formation agree
 * (docs/worked-examples.md#heat-of-fermentation)
 * @example
 * heatOfFermentation(kilograms(1.5)); // 880
 */
export function heatOfFermentation(extract: Kilograms): Kilojoules {
  return kilojoules(KILOJOULES_PER_KILOGRAM * requireInRange("fermented extract", extract, kilograms.range));
}
