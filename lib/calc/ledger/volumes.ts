import { wortVolume } from "../kettle";
import { celsius, degreesPlato, kilograms } from "../units";
import type { Masses } from "./mass-balance";

/** Densities are known up to here; below sea level wort boils a little hotter, which changes the volume by 0.1 %. */
const HOTTEST_C = 100;

/**
 * Finds the volume of the wort at the end of the boil.
 *
 * @returns Volume, L at the temperature, °C.
 */
export function postBoilLitres(masses: Masses, atC = 20): number {
  return wortVolume({
    kg: kilograms(masses.postBoilKg),
    plato: degreesPlato((100 * masses.postBoilExtractKg) / masses.postBoilKg),
    celsius: celsius(Math.min(HOTTEST_C, atC)),
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
    plato: degreesPlato(Math.max(0, Math.min(35, (100 * masses.runOffExtractKg) / masses.runOffKg))),
    celsius: celsius(Math.min(HOTTEST_C, atC)),
  });
}
