import { wortVolume } from "../kettle";
import { celsius, degreesPlato, kilograms } from "../units";
import type { ExplanationContext } from "./explanation-context";
import { flowOf } from "./ledger-flows";

/**
 * Finds the volume of the wort at the end of the boil as if cooled.
 *
 * @returns Volume, L at 20 °C.
 */
export function postBoilLitresAt20({ ledger }: ExplanationContext): number {
  const wort = flowOf(ledger, "kettle", "out", "hot wort");
  if (wort === null || wort.kg <= 0) return 0;
  const plato = degreesPlato((100 * wort.extractKg) / wort.kg);
  return wortVolume({ kg: kilograms(wort.kg), plato, celsius: celsius(20) });
}

/**
 * Finds the share of what is in the fermenter that was boiled.
 *
 * @returns Fraction; the rest is water added after the boil.
 */
export function boiledShare({ ledger, recipe }: ExplanationContext): number {
  const intoFermenter = ledger.quantities["fermenter.volume"];
  return intoFermenter === null || intoFermenter <= 0 ? 1 : 1 - recipe.topUp / intoFermenter;
}
