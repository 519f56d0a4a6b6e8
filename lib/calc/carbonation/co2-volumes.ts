import { requireInRange } from "../errors";
import { volumesCo2, type Bar, type Celsius, type VolumesCo2 } from "../units";
import { SOLUBILITY_RANGE } from "./gauge-pressure";
import { FIT_OFFSET, VACUUM_BAR, volumesPerBar } from "./solubility-fit";

/** From a vacuum to what puts ten volumes into the warmest beer; colder beer is full sooner, and then its carbonation refuses. */
export const GAUGE_RANGE = { unit: "bar", min: -1.0133, max: 20 } as const;

/**
 * Finds the carbonation of beer at rest under carbon dioxide.
 *
 * A fit to the brewers' table, because the table is what the trade means by volumes; Henry's law as the German handbooks
 * print it is the second method and agrees within 0.08 volumes up to 20 °C. Above 30 °C the fit reads 3 to 12 % high,
 * so for the strength of bottles use `bottlePressure`. Higher up use `co2VolumesAtAltitude`.
 *
 * @param a.celsius - Temperature of the beer, °C.
 * @param a.gaugeBar - Gauge pressure at sea level, bar.
 * @returns Volumes of CO2 at 0 °C and 1 atm in a volume of beer.
 * @validRange −2 to 45 °C, vacuum to 20 bar, up to 10 volumes; the table behind the fit ends near 20 °C and 2 bar.
 * @throws {@link OutOfRangeError} when temperature, pressure or carbonation is outside its range.
 * @source deLange 2011, fit to the table of ASBC Beer-13 (docs/sources.md#delange-2011)
 * @example
 * co2Volumes({ celsius: celsius(4), gaugeBar: bar(0.81) }); // 2.49
 */
export function co2Volumes({ celsius, gaugeBar }: { readonly celsius: Celsius; readonly gaugeBar: Bar }): VolumesCo2 {
  requireInRange("temperature", celsius, SOLUBILITY_RANGE.celsius);
  requireInRange("gauge pressure", gaugeBar, GAUGE_RANGE);
  const volumes = (gaugeBar - VACUUM_BAR) * volumesPerBar(celsius) - FIT_OFFSET;
  // A vacuum holds none, where the constant of the fit would make it slightly less.
  return volumesCo2(Math.max(0, volumes));
}
