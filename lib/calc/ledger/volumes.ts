import { wortVolume } from "../kettle";
import { celsius, degreesPlato, kilograms } from "../units";
import type { Masses } from "./mass-balance";

/** Wort at the end of the boil, L at 20 °C. */
export function postBoilLitres(masses: Masses, atC = 20): number {
  return wortVolume({
    kg: kilograms(masses.postBoilKg),
    plato: degreesPlato((100 * masses.postBoilExtractKg) / masses.postBoilKg),
    celsius: celsius(atC),
  });
}

/** Run-off in the kettle before the boil, L at a temperature. */
export function runOffLitres(masses: Masses, atC: number): number {
  return wortVolume({
    kg: kilograms(masses.runOffKg),
    plato: degreesPlato(Math.min(35, (100 * masses.runOffExtractKg) / masses.runOffKg)),
    celsius: celsius(atC),
  });
}
