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

export type BoilOffRate =
  | { readonly ok: true; readonly kilogramsPerHour: KilogramsPerHour }
  | {
      readonly ok: false;
      readonly reason: "losses-exceed-power";
      /** Power that is missing to hold the boiling point. */
      readonly missingW: Watts;
    };

/**
 * Finds what a boiling kettle evaporates: all power that its walls do not lose turns water into steam.
 *
 * @returns Evaporation, kg/h (1 kg is 1.002 L of cold water); or the power that is missing to keep it boiling.
 * @validRange Boiling point 0 to 102 °C, air −30 to 60 °C.
 * @throws {@link OutOfRangeError} when an argument is outside its range.
 * @source Energy balance (docs/sources.md#energy-balance)
 * @example
 * boilOffRate({ powerW: watts(2000), lossCoefficient: wattsPerKelvin(0), boilingC: celsius(100), ambientC: celsius(20) });
 * // { ok: true, kilogramsPerHour: 3.19 }
 */
export function boilOffRate({
  powerW,
  lossCoefficient,
  boilingC,
  ambientC,
}: {
  readonly powerW: Watts;
  readonly lossCoefficient: WattsPerKelvin;
  readonly boilingC: Celsius;
  readonly ambientC: Celsius;
}): BoilOffRate {
  requireInRange("power", powerW, watts.range);
  requireInRange("heat loss", lossCoefficient, wattsPerKelvin.range);
  requireInRange("boiling point", boilingC, LATENT_HEAT_RANGE);
  requireInRange("air temperature", ambientC, EVAPORATION_RANGE.ambient);
  const netW = powerW - lossCoefficient * (boilingC - ambientC);
  if (netW < 0) return { ok: false, reason: "losses-exceed-power", missingW: watts(-netW) };
  return { ok: true, kilogramsPerHour: kilogramsPerHour((3600 * netW) / latentHeat(boilingC)) };
}
