import { requireInRange } from "../errors";
import { bar, type Bar, type Celsius, type VolumesCo2 } from "../units";
import { FIT_OFFSET, VACUUM_BAR, volumesPerBar } from "./solubility-fit";

export const SOLUBILITY_RANGE = {
  celsius: { unit: "°C", min: -2, max: 45 },
  volumes: { unit: "volumes", min: 0, max: 10 },
} as const;

/**
 * Finds the pressure over beer that holds a carbonation: the exact inverse of `co2Volumes`.
 *
 * @returns Gauge pressure at sea level, bar; negative where beer would lose gas to the open air.
 * @validRange −2 to 45 °C, 0 to 10 volumes; the table behind the fit ends near 20 °C.
 * @throws {@link OutOfRangeError} when temperature, carbonation or pressure is outside its range.
 * @source deLange 2011, fit to the table of ASBC Beer-13 (docs/sources.md#delange-2011)
 * @example
 * gaugePressure({ celsius: celsius(4), volumes: volumesCo2(2.5) }); // 0.81
 */
export function gaugePressure({ celsius, volumes }: { readonly celsius: Celsius; readonly volumes: VolumesCo2 }): Bar {
  requireInRange("temperature", celsius, SOLUBILITY_RANGE.celsius);
  requireInRange("carbonation", volumes, SOLUBILITY_RANGE.volumes);
  return bar((volumes + FIT_OFFSET) / volumesPerBar(celsius) + VACUUM_BAR);
}
