import { requireInRange } from "../errors";
import { celsius, litres as litresOf, type DegreesPlato, type Litres } from "../units";
import { BLENDED_RANGE } from "./blend";
import { TARGET_PLATO_RANGE } from "./dilute-to";
import { waterDensity } from "./water-density";
import { WORT_RANGE, wortDensity } from "./wort-density";

export type BoilDown =
  | { readonly ok: true; readonly evaporatedLitres: Litres; readonly litres: Litres }
  | { readonly ok: false; readonly reason: "stronger-than-target" | "no-extract" };

const AT_20 = celsius(20);

/**
 * Finds the water to boil away until a wort has a strength.
 *
 * @param a.litres - Wort, L at 20 °C.
 * @param a.plato - Its strength, °P.
 * @param a.targetPlato - Strength it is to have, °P.
 * @returns Water to evaporate and volume left, L at 20 °C; or that the wort is stronger already, or water that no boil
 * makes wort of.
 * @validRange Wort 0 to 35 °P and up to 50 000 L, target 0.1 to 35 °P.
 * @throws {@link OutOfRangeError} when an argument is outside its range.
 * @source Mass balance (docs/sources.md#mass-balance)
 * @example
 * boilDownTo({ litres: litres(25), plato: degreesPlato(10), targetPlato: degreesPlato(12) });
 * // { ok: true, evaporatedLitres: 4.333, litres: 20.67 }
 */
export function boilDownTo({
  litres,
  plato,
  targetPlato,
}: {
  readonly litres: Litres;
  readonly plato: DegreesPlato;
  readonly targetPlato: DegreesPlato;
}): BoilDown {
  requireInRange("volume", litres, BLENDED_RANGE);
  requireInRange("extract", plato, WORT_RANGE.plato);
  requireInRange("target extract", targetPlato, TARGET_PLATO_RANGE);
  if (plato === 0) return { ok: false, reason: "no-extract" };
  if (plato > targetPlato) return { ok: false, reason: "stronger-than-target" };
  const kg = litres * wortDensity({ plato, celsius: AT_20 });
  const leftKg = (kg * plato) / targetPlato;
  return {
    ok: true,
    evaporatedLitres: litresOf((kg - leftKg) / waterDensity(AT_20)),
    litres: litresOf(leftKg / wortDensity({ plato: targetPlato, celsius: AT_20 })),
  };
}
