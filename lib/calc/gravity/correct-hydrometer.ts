import { requireInRange } from "../errors";
import { specificGravity, type Celsius, type SpecificGravity } from "../units";
import { waterDensity } from "./water-density";

export const HYDROMETER_RANGE = { unit: "°C", min: 0, max: 60 } as const;

/** Cubic expansion of soda-lime glass, 1/K. */
const GLASS_EXPANSION = 25e-6;

/**
 * Corrects a hydrometer reading for the temperature of the sample.
 *
 * The wort is taken to expand as water does and the glass as soda-lime. Gravities referred to 20 °C and to 60 °F differ
 * by less than 0.0002 and are not told apart.
 *
 * @returns Specific gravity 20/20: within 0.0005 up to 40 °C; above that wort expands more than water, and the result
 * is low by up to 0.002 at 60 °C.
 * @validRange Sample and calibration 0 to 60 °C; cool a hotter sample.
 * @throws {@link OutOfRangeError} when a temperature, the reading or the result is outside its range.
 * @source Kell 1975 (docs/sources.md#kell-1975); glass after ISO 387 (docs/sources.md#iso-hydrometers)
 * @example
 * correctHydrometer({ sg: specificGravity(1.05), sampleC: celsius(30), calibrationC: celsius(20) }); // 1.05243
 */
export function correctHydrometer({
  sg,
  sampleC,
  calibrationC,
}: {
  readonly sg: SpecificGravity;
  readonly sampleC: Celsius;
  readonly calibrationC: Celsius;
}): SpecificGravity {
  requireInRange("hydrometer reading", sg, specificGravity.range);
  requireInRange("sample temperature", sampleC, HYDROMETER_RANGE);
  requireInRange("calibration temperature", calibrationC, HYDROMETER_RANGE);
  const waterRatio = waterDensity(calibrationC) / waterDensity(sampleC);
  return specificGravity((sg * waterRatio) / (1 + GLASS_EXPANSION * (sampleC - calibrationC)));
}
