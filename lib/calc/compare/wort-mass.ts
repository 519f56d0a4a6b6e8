import { waterDensity, wortDensity } from "../gravity";
import { celsius, degreesPlato } from "../units";

const STRONGEST_PLATO = 35;

/** A wort or water as it stands somewhere, kg. */
export interface WortMass {
  readonly kg: number;
  readonly extractKg: number;
}

/**
 * Weighs a wort from its volume and strength, read at a temperature.
 *
 * A solver may pass by a strength that no wort has; the density stops at the ends of its range.
 *
 * @returns Mass and extract, kg.
 * @source Mass balance (docs/sources.md#mass-balance), density of `wortDensity`
 */
export function wortMass(litres: number, plato: number, atC: number): WortMass {
  const strength = degreesPlato(Math.min(STRONGEST_PLATO, Math.max(0, plato)));
  const kg = litres * wortDensity({ plato: strength, celsius: celsius(atC) });
  return { kg, extractKg: (kg * plato) / 100 };
}

/**
 * Finds the volume of a wort at a temperature, the inverse of `wortMass`.
 *
 * @returns Volume, L.
 * @source Mass balance (docs/sources.md#mass-balance), density of `wortDensity`
 */
export function litresOf(kg: number, plato: number, atC: number): number {
  return kg / wortMass(1, plato, atC).kg;
}

/**
 * Finds how strong the boiled wort was from the strength in the fermenter, where water may have been added to it.
 *
 * @returns Strength, °P, of the wort without the added water.
 * @source Mass balance (docs/sources.md#mass-balance)
 */
export function platoBeforeTopUp(fermenter: WortMass, plato: number, topUpKg: number): number {
  if (topUpKg === 0) return plato;
  const wortKg = fermenter.kg - topUpKg;
  return wortKg > 0 ? Math.min(STRONGEST_PLATO, (100 * fermenter.extractKg) / wortKg) : STRONGEST_PLATO;
}

/**
 * Weighs water poured at 20 °C.
 *
 * @returns Mass, kg.
 */
export function waterMass(litres: number): number {
  return litres * waterDensity(celsius(20));
}
