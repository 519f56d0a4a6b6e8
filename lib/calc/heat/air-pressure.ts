import { requireInRange } from "../errors";
import { kilopascals, metres, type Kilopascals, type Metres } from "../units";

/**
 * Gives the mean air pressure at an altitude.
 *
 * The weather moves it by some 2 % either way, which is half a kelvin of the boiling point.
 *
 * @returns Pressure of the standard atmosphere, kPa.
 * @validRange −450 to 6000 m.
 * @throws {@link OutOfRangeError} when the altitude is outside the valid range.
 * @source ISO 2533:1975, US Standard Atmosphere 1976 (docs/sources.md#iso-2533-1975)
 * @example
 * airPressure({ altitudeM: metres(1000) }); // 89.87
 */
export function airPressure({ altitudeM }: { readonly altitudeM: Metres }): Kilopascals {
  requireInRange("altitude", altitudeM, metres.range);
  return kilopascals(101.325 * (1 - 2.25577e-5 * altitudeM) ** 5.25588);
}
