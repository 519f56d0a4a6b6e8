import { requireInRange } from "../errors";
import { joulesPerKelvin, kilograms, litresPerMinute, wattsPerKelvin } from "../units";
import { chillAgainstFlow } from "./chill-against-flow";
import { chillMixed } from "./chill-mixed";
import type { Chill, ChillOutcome } from "./chilling";
import { EVAPORATION_RANGE } from "./evaporation-flux";
import { WORT_HEAT_RANGE } from "./wort-heat-capacity";

export const COOLANT_RANGE = { unit: "°C", min: 0, max: 60 } as const;

/**
 * Finds how long wort takes to cool, and along which curve.
 *
 * In the kettle (coil, ice, air) the wort is well mixed and cools exponentially; the coil warms its water with
 * effectiveness 1 − exp(−UA/ṁc). A counterflow exchanger runs as fast as it may, so that wort leaves at `toC`, and the
 * kettle stays hot until it is empty. The specific heat is that at the middle of the span.
 *
 * @param a - Wort, vessel, chiller and surroundings. `ice bath` and `none` do not look at flow and temperature of the coolant.
 * @returns Time, coolant and curves; or the temperature below which it cannot cool, for which more than three years
 *   count as never. Zero where `toC` is not below `fromC`.
 * @validRange 0 to 35 °P, wort 0 to 102 °C, coolant 0 to 60 °C, air −30 to 60 °C.
 * @throws {@link OutOfRangeError} when an argument is outside its range.
 * @source Kays and London 1984, Compact Heat Exchangers, effectiveness (docs/sources.md#kays-london-1984)
 * @example
 * chill({ ...wort, kind: "immersion", fromC: celsius(99), toC: celsius(20) }); // { ok: true, seconds: 1240, … }
 */
export function chill(a: Chill): ChillOutcome {
  requireInRange("mass", a.massKg, kilograms.range);
  requireInRange("extract", a.plato, WORT_HEAT_RANGE.plato);
  requireInRange("vessel heat capacity", a.vesselHeatCapacity, joulesPerKelvin.range);
  requireInRange("conductance", a.conductance, wattsPerKelvin.range);
  requireInRange("coolant flow", a.coolantFlow, litresPerMinute.range);
  requireInRange("coolant temperature", a.coolantC, COOLANT_RANGE);
  requireInRange("heat loss", a.lossCoefficient, wattsPerKelvin.range);
  requireInRange("air temperature", a.ambientC, EVAPORATION_RANGE.ambient);
  requireInRange("start temperature", a.fromC, WORT_HEAT_RANGE.celsius);
  requireInRange("target temperature", a.toC, WORT_HEAT_RANGE.celsius);
  return a.kind === "counterflow" ? chillAgainstFlow(a) : chillMixed(a);
}
