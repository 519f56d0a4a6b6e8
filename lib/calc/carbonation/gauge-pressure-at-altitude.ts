import { bar, type Bar, type Celsius, type Metres, type VolumesCo2 } from "../units";
import { gaugePressure } from "./gauge-pressure";
import { missingAirBar } from "./missing-air-bar";

/**
 * Finds the gauge pressure over beer that holds a carbonation at an altitude.
 *
 * Beer answers to the absolute pressure, a gauge shows what is above the air: in thinner air the gauge must show more.
 *
 * @param a.altitudeM - Altitude of the cellar, m.
 * @returns Gauge pressure, bar; at sea level that of `gaugePressure`.
 * @validRange −2 to 45 °C, 0 to 10 volumes, −450 to 6000 m; the weather moves the air by some 0.02 bar.
 * @throws {@link OutOfRangeError} when temperature, carbonation or altitude is outside its range.
 * @source deLange 2011 (docs/sources.md#delange-2011), standard atmosphere of ISO 2533 (docs/sources.md#iso-2533-1975)
 * @example
 * gaugePressureAtAltitude({ celsius: celsius(4), volumes: volumesCo2(2.5), altitudeM: metres(1500) }); // 0.98
 */
export function gaugePressureAtAltitude(a: {
  readonly celsius: Celsius;
  readonly volumes: VolumesCo2;
  readonly altitudeM: Metres;
}): Bar {
  return bar(gaugePressure(a) + missingAirBar(a.altitudeM));
}
