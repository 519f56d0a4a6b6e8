import { requireInRange } from "../errors";
import { bar, type Bar, type Celsius, type VolumesCo2 } from "../units";
import { SOLUBILITY_RANGE } from "./gauge-pressure";
import { CO2_GRAMS_PER_VOLUME } from "./grams-per-litre-from-volumes";

/** Air pressure in the equation, bar. */
const AIR_BAR = 1.013;

/**
 * Finds the pressure in a closed bottle or keg whose beer has had time to come to rest.
 *
 * By Henry's law, which gives more pressure in warm beer than the fit behind `gaugePressure`: the cautious side for glass.
 * The gas that leaves the beer for the headspace is left out, which errs to the same side; air shut in with it would add.
 *
 * @param a.volumes - Carbonation of the beer, volumes.
 * @param a.celsius - Warmest storage, °C.
 * @returns Gauge pressure at sea level, bar.
 * @validRange 0 to 10 volumes, −2 to 45 °C.
 * @throws {@link OutOfRangeError} when carbonation or temperature is outside its range.
 * @source Henry's law for beer (docs/sources.md#henry-co2)
 * @example
 * closedPressure({ volumes: volumesCo2(2.5), celsius: celsius(30) }); // 3.01
 */
export function closedPressure({ volumes, celsius }: { readonly volumes: VolumesCo2; readonly celsius: Celsius }): Bar {
  requireInRange("temperature", celsius, SOLUBILITY_RANGE.celsius);
  requireInRange("carbonation", volumes, SOLUBILITY_RANGE.volumes);
  const temperatureK = celsius + 273.15;
  const gramsPerLitreBar = 10 * Math.exp(-10.73797 + 2617.25 / temperatureK);
  return bar((volumes * CO2_GRAMS_PER_VOLUME) / gramsPerLitreBar - AIR_BAR);
}
