import { requireInRange } from "../errors";
import {
  degreesPlato,
  joulesPerKelvin,
  joulesPerKilogramKelvin,
  kilograms,
  type JoulesPerKilogramKelvin,
  type Kilograms,
} from "../units";
import { heatUp, type HeatUp, type HeatUpOutcome } from "./heat-up";
import { MALT_HEAT_CAPACITY } from "./strike-temperature";

/** A mash that is heated in its vessel. */
export interface StepHeat extends Omit<HeatUp, "massKg" | "plato"> {
  readonly grainKg: Kilograms;
  readonly waterKg: Kilograms;
  readonly grainHeatCapacity?: JoulesPerKilogramKelvin;
}

/**
 * Finds how long a heated mash takes to its next rest.
 *
 * The balance of `heatUp` with the grain beside the water: it takes heat as dry malt does and does not evaporate. Too
 * little stirring lets the mash scorch before the thermometer notices; heat gently and keep it moving.
 *
 * @param a - The mash, its vessel and its surroundings.
 * @returns Time, energy into the mash and water evaporated; or the temperature where losses meet the power.
 * @validRange 0 to 102 °C, air −30 to 60 °C; grain and vessel together up to 1 GJ/K. Grain heat capacity is
 *   1717 J/(kg·K) unless given.
 * @throws {@link OutOfRangeError} when an argument is outside its range.
 * @source Energy balance (docs/sources.md#energy-balance); malt: Brewing Room Book (docs/sources.md#brewing-room-book-1985)
 * @example
 * stepHeat({ ...mash, fromC: celsius(52), toC: celsius(65), powerW: watts(2500) }); // { ok: true, seconds: 372, … }
 */
export function stepHeat({ grainKg, waterKg, grainHeatCapacity = MALT_HEAT_CAPACITY, ...a }: StepHeat): HeatUpOutcome {
  requireInRange("grain", grainKg, kilograms.range);
  requireInRange("mash water", waterKg, kilograms.range);
  requireInRange("grain specific heat", grainHeatCapacity, joulesPerKilogramKelvin.range);
  requireInRange("vessel heat capacity", a.vesselHeatCapacity, joulesPerKelvin.range);
  const vesselHeatCapacity = joulesPerKelvin(a.vesselHeatCapacity + grainKg * grainHeatCapacity);
  return heatUp({ ...a, vesselHeatCapacity, massKg: waterKg, plato: degreesPlato(0) });
}
