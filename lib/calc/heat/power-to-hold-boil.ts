import { requireInRange } from "../errors";
import {
  kilogramsPerHour,
  watts,
  wattsPerKelvin,
  type Celsius,
  type KilogramsPerHour,
  type Watts,
  type WattsPerKelvin,
} from "../units";
import { EVAPORATION_RANGE } from "./evaporation-flux";
import { LATENT_HEAT_RANGE, latentHeat } from "./latent-heat";

/**
 * Finds the power that a boil of a given evaporation needs; the inverse of `boilOffRate`.
 *
 * @returns Power into the liquid, W; 0 where the surroundings are warm enough to need none.
 * @validRange Boiling point 0 to 102 °C, air −30 to 60 °C.
 * @throws {@link OutOfRangeError} when an argument is outside its range.
 * @source Energy balance (docs/sources.md#energy-balance)
 * @example
 * powerToHoldBoil({ ...kettle, boilOff: kilogramsPerHour(3.5), lossCoefficient: wattsPerKelvin(0) }); // 2194
 */
export function powerToHoldBoil({
  boilOff,
  lossCoefficient,
  boilingC,
  ambientC,
}: {
  readonly boilOff: KilogramsPerHour;
  readonly lossCoefficient: WattsPerKelvin;
  readonly boilingC: Celsius;
  readonly ambientC: Celsius;
}): Watts {
  requireInRange("evaporation", boilOff, kilogramsPerHour.range);
  requireInRange("heat loss", lossCoefficient, wattsPerKelvin.range);
  requireInRange("boiling point", boilingC, LATENT_HEAT_RANGE);
  requireInRange("air temperature", ambientC, EVAPORATION_RANGE.ambient);
  return watts(Math.max(0, (boilOff * latentHeat(boilingC)) / 3600 + lossCoefficient * (boilingC - ambientC)));
}
