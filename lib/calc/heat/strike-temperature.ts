import { requireInRange } from "../errors";
import {
  defineQuantity,
  joulesPerKelvin,
  joulesPerKilogramKelvin,
  kilograms,
  type Celsius,
  type JoulesPerKelvin,
  type JoulesPerKilogramKelvin,
  type Kilograms,
} from "../units";
import { WATER_HEAT_CAPACITY } from "./wort-heat-capacity";

export const MIXING_RANGE = {
  celsius: { unit: "°C", min: -20, max: 102 },
  /** Water that the grain is stirred into. */
  water: { unit: "kg", min: 0.001, max: 100000 },
} as const;

/** Malt of about 6 % moisture, J/(kg·K): Brewing Room Book 1984/85. */
export const MALT_HEAT_CAPACITY = joulesPerKilogramKelvin(0.41 * WATER_HEAT_CAPACITY);

/** The answer may lie past the boiling point: then no water is hot enough. */
export const STRIKE_RANGE = { unit: "°C", min: -500, max: 5000 } as const;
const strike = defineQuantity("strike temperature", STRIKE_RANGE);

/**
 * Finds how hot the water must be, so that grain stirred into it comes to rest at the mash temperature.
 *
 * A heat balance of water, grain and vessel. The heat of wetting (`slakingRise`) is left out, as is usual for small
 * mashes. A vessel that is already as warm as the water counts with heat capacity 0.
 *
 * @returns Temperature, °C; above the boiling point where the grain is too much for the water.
 * @validRange −20 to 102 °C, at least 0.001 kg of water. Grain heat capacity is 1717 J/(kg·K) unless given.
 * @throws {@link OutOfRangeError} when an argument is outside the valid range.
 * @source Heat balance (docs/sources.md#energy-balance); malt: Brewing Room Book (docs/sources.md#brewing-room-book-1985)
 * @example
 * strikeTemperature({ ...grist, mashC: celsius(67), grainC: celsius(20), grainKg: kilograms(4), waterKg: kilograms(10) }); // 74.7
 */
export function strikeTemperature({
  mashC,
  grainC,
  grainKg,
  waterKg,
  grainHeatCapacity = MALT_HEAT_CAPACITY,
  vesselHeatCapacity,
  vesselC,
}: {
  readonly mashC: Celsius;
  readonly grainC: Celsius;
  readonly grainKg: Kilograms;
  readonly waterKg: Kilograms;
  readonly grainHeatCapacity?: JoulesPerKilogramKelvin;
  readonly vesselHeatCapacity: JoulesPerKelvin;
  readonly vesselC: Celsius;
}): Celsius {
  requireInRange("mash temperature", mashC, MIXING_RANGE.celsius);
  requireInRange("grain temperature", grainC, MIXING_RANGE.celsius);
  requireInRange("vessel temperature", vesselC, MIXING_RANGE.celsius);
  requireInRange("grain", grainKg, kilograms.range);
  requireInRange("mash water", waterKg, MIXING_RANGE.water);
  requireInRange("grain specific heat", grainHeatCapacity, joulesPerKilogramKelvin.range);
  requireInRange("vessel heat capacity", vesselHeatCapacity, joulesPerKelvin.range);
  const takenJ = grainKg * grainHeatCapacity * (mashC - grainC) + vesselHeatCapacity * (mashC - vesselC);
  return strike(mashC + takenJ / (waterKg * WATER_HEAT_CAPACITY));
}
