import { celsius, type Celsius, type Metres } from "../units";
import { airPressure } from "./air-pressure";
import { antoineTemperature } from "./antoine";

/**
 * Finds the boiling point of water at an altitude.
 *
 * @returns Temperature, °C, at the pressure of the standard atmosphere, within 0.1 K; wort boils a fraction of a
 *   kelvin hotter.
 * @validRange −450 to 6000 m; below sea level the vapour-pressure fit reaches 1.5 K past its span.
 * @throws {@link OutOfRangeError} when the altitude is outside the valid range.
 * @source ISO 2533:1975 for the pressure (docs/sources.md#iso-2533-1975), Antoine (docs/sources.md#antoine-water)
 * @example
 * boilingPoint({ altitudeM: metres(1000) }); // 96.7
 */
export function boilingPoint(a: { readonly altitudeM: Metres }): Celsius {
  return celsius(antoineTemperature(airPressure(a)));
}
