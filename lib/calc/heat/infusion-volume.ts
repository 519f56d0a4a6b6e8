import { requireInRange } from "../errors";
import {
  joulesPerKelvin,
  joulesPerKilogramKelvin,
  kilograms,
  type Celsius,
  type JoulesPerKelvin,
  type JoulesPerKilogramKelvin,
  type Kilograms,
} from "../units";
import { MALT_HEAT_CAPACITY, MIXING_RANGE } from "./strike-temperature";
import { WATER_HEAT_CAPACITY } from "./wort-heat-capacity";

/** An infusion or decoction must be at least this much hotter (or colder) than the rest it leads to. */
export const LEAST_LEAD_K = 0.1;

/**
 * Finds how much hot water brings a resting mash to its next temperature; cold water works the same way down.
 *
 * @returns Water, kg (which is its volume at 20 °C within 0.2 %).
 * @validRange −20 to 102 °C, with `toC` between `fromC` and `infusionC` and 0.1 K short of the latter. Grain heat
 *   capacity is 1717 J/(kg·K) unless given.
 * @throws {@link OutOfRangeError} when an argument is outside the valid range.
 * @source Heat balance (docs/sources.md#energy-balance); malt: Brewing Room Book (docs/sources.md#brewing-room-book-1985)
 * @example
 * infusionVolume({ ...mash, fromC: celsius(52), toC: celsius(65), infusionC: celsius(98) }); // 5.5 for 5 kg in 12 kg
 */
export function infusionVolume({
  fromC,
  toC,
  infusionC,
  grainKg,
  waterKg,
  vesselHeatCapacity,
  grainHeatCapacity = MALT_HEAT_CAPACITY,
}: {
  readonly fromC: Celsius;
  readonly toC: Celsius;
  readonly infusionC: Celsius;
  readonly grainKg: Kilograms;
  readonly waterKg: Kilograms;
  readonly vesselHeatCapacity: JoulesPerKelvin;
  readonly grainHeatCapacity?: JoulesPerKilogramKelvin;
}): Kilograms {
  requireInRange("mash temperature", fromC, MIXING_RANGE.celsius);
  requireInRange("infusion temperature", infusionC, MIXING_RANGE.celsius);
  const heating = infusionC > fromC;
  requireInRange("target temperature", toC, {
    unit: "°C",
    min: heating ? fromC : infusionC + LEAST_LEAD_K,
    max: heating ? infusionC - LEAST_LEAD_K : fromC,
  });
  requireInRange("grain", grainKg, kilograms.range);
  requireInRange("mash water", waterKg, kilograms.range);
  requireInRange("grain specific heat", grainHeatCapacity, joulesPerKilogramKelvin.range);
  requireInRange("vessel heat capacity", vesselHeatCapacity, joulesPerKelvin.range);
  const mashJPerK = grainKg * grainHeatCapacity + waterKg * WATER_HEAT_CAPACITY + vesselHeatCapacity;
  return kilograms((mashJPerK * (toC - fromC)) / (WATER_HEAT_CAPACITY * (infusionC - toC)));
}
