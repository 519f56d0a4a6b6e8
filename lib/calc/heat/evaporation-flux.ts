import { requireInRange } from "../errors";
import {
  defineQuantity,
  fraction,
  metresPerSecond,
  type Celsius,
  type Fraction,
  type MetresPerSecond,
  type Quantity,
} from "../units";
import { antoinePressure } from "./antoine";
import { latentHeatOf } from "./latent-heat";

export type KilogramsPerSquareMetreHour = Quantity<"kg/(m²·h)">;

const flux = defineQuantity("evaporation", { unit: "kg/(m²·h)", min: 0, max: 10_000 });

export const EVAPORATION_RANGE = {
  celsius: { unit: "°C", min: 0, max: 102 },
  ambient: { unit: "°C", min: -30, max: 60 },
} as const;

/**
 * Gives what evaporates from an open surface of hot water that does not boil.
 *
 * The equation was made for pools and is carried on here to hotter water. Below the dew point of the air water
 * condenses instead; that is left out, and the flux is 0.
 *
 * @returns Evaporation, kg per square metre and hour.
 * @validRange Water 0 to 102 °C, air −30 to 60 °C; studied on pools below about 40 °C.
 * @throws {@link OutOfRangeError} when a temperature, the humidity or the air speed is outside its range.
 * @source ASHRAE Handbook, HVAC Applications, natatoriums, after Carrier 1918 (docs/sources.md#ashrae-carrier)
 * @example
 * evaporationFlux({ celsius: celsius(67), ambientC: celsius(20), relativeHumidity: fraction(0.5), airSpeed: metresPerSecond(0.1) }); // 3.9
 */
export function evaporationFlux({
  celsius,
  ambientC,
  relativeHumidity,
  airSpeed,
}: {
  readonly celsius: Celsius;
  readonly ambientC: Celsius;
  readonly relativeHumidity: Fraction;
  readonly airSpeed: MetresPerSecond;
}): KilogramsPerSquareMetreHour {
  requireInRange("temperature", celsius, EVAPORATION_RANGE.celsius);
  requireInRange("air temperature", ambientC, EVAPORATION_RANGE.ambient);
  requireInRange("relative humidity", relativeHumidity, fraction.range);
  requireInRange("air speed", airSpeed, metresPerSecond.range);
  const excessKPa = Math.max(0, antoinePressure(celsius) - relativeHumidity * antoinePressure(ambientC));
  return flux((3600 * evaporativeLoss(excessKPa, airSpeed)) / latentHeatOf(celsius));
}

/**
 * Heat that evaporation carries off: (pw − pa)(0.089 + 0.0782 v), in W/m² where the source has kW.
 *
 * @returns Loss, W/m².
 */
export const evaporativeLoss = (excessKPa: number, airSpeed: number): number =>
  1000 * excessKPa * (0.089 + 0.0782 * airSpeed);
