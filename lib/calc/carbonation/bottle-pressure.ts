import { requireInRange } from "../errors";
import { bar, type Bar, type Celsius, type VolumesCo2 } from "../units";
import { SOLUBILITY_RANGE } from "./gauge-pressure";
import { CO2_GRAMS_PER_VOLUME } from "./priming-sugar";

/** Pressure in a closed bottle, or the refusal to fill it. */
export type BottlePressure =
  | { readonly ok: true; readonly gaugeBar: Bar }
  | { readonly ok: false; readonly reason: "above-rating"; readonly gaugeBar: Bar; readonly rated: VolumesCo2 };

/** Air pressure in the equation, bar. */
const AIR_BAR = 1.013;

/**
 * Finds the pressure in a closed bottle at the warmest place it will stand, and refuses more gas than it is made for.
 *
 * By Henry's law, which gives more pressure in warm beer than the fit behind `gaugePressure`: the cautious side for glass.
 *
 * @param a.volumes - Carbonation of the beer, volumes.
 * @param a.celsius - Warmest storage, °C.
 * @param a.rated - Carbonation that the maker of the bottle states, volumes.
 * @returns Gauge pressure, bar, and whether the bottle is made for it.
 * @validRange 0 to 10 volumes, −2 to 45 °C.
 * @throws {@link OutOfRangeError} when carbonation, rating or temperature is outside its range.
 * @source Henry's law for beer (docs/sources.md#henry-co2)
 * @example
 * bottlePressure({ volumes: volumesCo2(2.5), celsius: celsius(30), rated: volumesCo2(3) }); // { ok: true, gaugeBar: 3.01 }
 */
export function bottlePressure({
  volumes,
  celsius,
  rated,
}: {
  readonly volumes: VolumesCo2;
  readonly celsius: Celsius;
  readonly rated: VolumesCo2;
}): BottlePressure {
  requireInRange("temperature", celsius, SOLUBILITY_RANGE.celsius);
  requireInRange("carbonation", volumes, SOLUBILITY_RANGE.volumes);
  requireInRange("rating of the bottle", rated, SOLUBILITY_RANGE.volumes);
  const temperatureK = celsius + 273.15;
  const gramsPerLitreBar = 10 * Math.exp(-10.73797 + 2617.25 / temperatureK);
  const gaugeBar = bar((volumes * CO2_GRAMS_PER_VOLUME) / gramsPerLitreBar - AIR_BAR);
  return volumes <= rated ? { ok: true, gaugeBar } : { ok: false, reason: "above-rating", gaugeBar, rated };
}
