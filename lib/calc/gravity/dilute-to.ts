import { requireInRange } from "../errors";
import { celsius, litres as litresOf, type DegreesPlato, type Litres } from "../units";
import { BLENDED_RANGE } from "./blend";
import { waterDensity } from "./water-density";
import { WORT_RANGE, wortDensity } from "./wort-density";

/** Weaker than this a wort is water, and the water it takes has no bound. */
export const TARGET_PLATO_RANGE = { unit: "°P", min: 0.1, max: WORT_RANGE.plato.max } as const;

export type Dilution =
  | { readonly ok: true; readonly waterLitres: Litres; readonly litres: Litres }
  | { readonly ok: false; readonly reason: "weaker-than-target" };

const AT_20 = celsius(20);

/**
 * Finds the water that brings a wort down to a strength.
 *
 * @param a.litres - Wort, L at 20 °C.
 * @param a.plato - Its strength, °P.
 * @param a.targetPlato - Strength it is to have, °P.
 * @returns Water to add and volume then, L at 20 °C; or that the wort is weaker already.
 * @validRange Wort 0 to 35 °P and up to 50 000 L, target 0.1 to 35 °P.
 * @throws {@link OutOfRangeError} when an argument or the diluted volume is outside its range.
 * @source Mass balance (docs/sources.md#mass-balance)
 * @example
 * diluteTo({ litres: litres(20), plato: degreesPlato(15), targetPlato: degreesPlato(12) });
 * // { ok: true, waterLitres: 5.305, litres: 25.31 }
 */
export function diluteTo({
  litres,
  plato,
  targetPlato,
}: {
  readonly litres: Litres;
  readonly plato: DegreesPlato;
  readonly targetPlato: DegreesPlato;
}): Dilution {
  requireInRange("volume", litres, BLENDED_RANGE);
  requireInRange("extract", plato, WORT_RANGE.plato);
  requireInRange("target extract", targetPlato, TARGET_PLATO_RANGE);
  if (plato < targetPlato) return { ok: false, reason: "weaker-than-target" };
  const kg = litres * wortDensity({ plato, celsius: AT_20 });
  const dilutedKg = (kg * plato) / targetPlato;
  return {
    ok: true,
    waterLitres: litresOf((dilutedKg - kg) / waterDensity(AT_20)),
    litres: litresOf(dilutedKg / wortDensity({ plato: targetPlato, celsius: AT_20 })),
  };
}
