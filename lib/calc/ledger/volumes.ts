import { wortVolume } from "../kettle";
import { celsius, degreesPlato, kilograms } from "../units";
import type { Masses } from "./mass-balance";

/**
 * Finds the volume of the wort at the end of the boil.
 *
 * @returns Volume, L at the temperature, °C.
 */
export function postBoilLitres(masses: Masses, atC = 20): number {
  return wortVolume({
    kg: kilograms(masses.postBoilKg),
    plato: degreesPlato((100 * masses.postBoilExtractKg) / masses.postBoilKg),
    celsius: celsius(atC),
  });
}

/**
 * Finds the volume of the run-off before the boil.
 *
 * @returns Volume, L at the temperature, °C.
 */
export function runOffLitres(masses: Masses, atC: number): number {
  return wortVolume({
    kg: kilograms(masses.runOffKg),
    plato: degreesPlato(Math.min(35, (100 * masses.runOffExtractKg) / masses.runOffKg)),
    celsius: celsius(atC),
  });
}
