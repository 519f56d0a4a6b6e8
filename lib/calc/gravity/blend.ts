import { OutOfRangeError, requireInRange } from "../errors";
import { celsius, degreesPlato, litres as litresOf, type DegreesPlato, type Litres } from "../units";
import { WORT_RANGE, wortDensity } from "./wort-density";

/** A volume of wort at 20 °C and its strength. */
export interface WortVolume {
  readonly litres: Litres;
  readonly plato: DegreesPlato;
}

/** Volumes that are mixed, so that the whole is still one. */
export const BLENDED_RANGE = { unit: "L", min: 0, max: 50_000 } as const;

const AT_20 = celsius(20);

/**
 * Mixes worts: masses and extract add up, volumes only nearly.
 *
 * @param parts - The worts, L at 20 °C and °P; water is wort of 0 °P.
 * @returns Volume, L at 20 °C, and strength, °P.
 * @validRange 0 to 35 °P and up to 50 000 L each, with a volume above zero in all.
 * @throws {@link OutOfRangeError} when a part is outside its range or the whole volume is zero.
 * @source Mass balance (docs/sources.md#mass-balance)
 * @example
 * blend([{ litres: litres(10), plato: degreesPlato(16) }, { litres: litres(10), plato: degreesPlato(10) }]);
 * // { litres: 20.00, plato: 13.04 }
 */
export function blend(parts: readonly WortVolume[]): WortVolume {
  let massKg = 0;
  let extractKg = 0;
  for (const { litres, plato } of parts) {
    requireInRange("volume", litres, BLENDED_RANGE);
    requireInRange("extract", plato, WORT_RANGE.plato);
    const kg = litres * wortDensity({ plato, celsius: AT_20 });
    massKg += kg;
    extractKg += (kg * plato) / 100;
  }
  if (!(massKg > 0)) throw new OutOfRangeError("blended volume", 0, { ...litresOf.range, min: 0.001 });
  const plato = degreesPlato((100 * extractKg) / massKg);
  return { litres: litresOf(massKg / wortDensity({ plato, celsius: AT_20 })), plato };
}
