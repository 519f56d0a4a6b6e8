import { requireInRange } from "../errors";
import { bar, type Bar, type Celsius, type Metres, type VolumesCo2 } from "../units";
import { co2Volumes, GAUGE_RANGE } from "./co2-volumes";
import { missingAirBar } from "./missing-air-bar";

/** Room for the thin air that is taken off and for the dense air below sea level. */
export const GAUGE_AT_ALTITUDE_RANGE = { unit: "bar", min: -0.4, max: 19.9 } as const;

/**
 * Finds the carbonation of beer at rest from the gauge at an altitude: the inverse of `gaugePressureAtAltitude`.
 *
 * @param a.celsius - Temperature of the beer, °C.
 * @param a.gaugeBar - What the gauge shows, bar above the air around it.
 * @param a.altitudeM - Altitude of the cellar, m.
 * @returns Volumes of CO2 at 0 °C and 1 atm in a volume of beer.
 * @validRange −2 to 45 °C, −0.4 to 19.9 bar, −450 to 6000 m, up to 10 volumes.
 * @throws {@link OutOfRangeError} when temperature, pressure, altitude or carbonation is outside its range.
 * @source deLange 2011 (docs/sources.md#delange-2011), standard atmosphere of ISO 2533 (docs/sources.md#iso-2533-1975)
 * @example
 * co2VolumesAtAltitude({ celsius: celsius(4), gaugeBar: bar(0.98), altitudeM: metres(1500) }); // 2.51
 */
export function co2VolumesAtAltitude(a: {
  readonly celsius: Celsius;
  readonly gaugeBar: Bar;
  readonly altitudeM: Metres;
}): VolumesCo2 {
  requireInRange("gauge pressure", a.gaugeBar, GAUGE_AT_ALTITUDE_RANGE);
  const atSeaLevel = Math.max(GAUGE_RANGE.min, a.gaugeBar - missingAirBar(a.altitudeM));
  return co2Volumes({ celsius: a.celsius, gaugeBar: bar(atSeaLevel) });
}
