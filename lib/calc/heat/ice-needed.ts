import { OutOfRangeError, requireInRange } from "../errors";
import {
  joulesPerKelvin,
  kilograms,
  type Celsius,
  type DegreesPlato,
  type JoulesPerKelvin,
  type Kilograms,
} from "../units";
import { ICE_MELTING_J_PER_KG } from "./chill-mixed";
import { heatCapacityAtZero, heatCapacitySlope, WATER_HEAT_CAPACITY, WORT_HEAT_RANGE } from "./wort-heat-capacity";

export const ICE_RANGE = { unit: "°C", min: -30, max: 0 } as const;

/** Specific heat of ice just below melting, J/(kg·K): CRC Handbook, from memory. */
const ICE_HEAT_CAPACITY = 2100;

/**
 * Finds how much ice a bath needs to cool wort.
 *
 * A heat balance: the ice warms to 0 °C, melts, and its water warms to the temperature at which the bath ends. What the
 * bath takes up from the room, and the water that fills it beside the ice, come on top.
 *
 * @param a.iceC - Temperature of the ice, °C.
 * @param a.bathC - Temperature of the bath at the end, °C; not above the wort's.
 * @returns Ice, kg. Zero where the wort is already cold enough.
 * @validRange 0 to 35 °P, wort 0 to 102 °C, ice −30 to 0 °C.
 * @throws {@link OutOfRangeError} when an argument or the ice is outside its range.
 * @source Energy balance (docs/sources.md#energy-balance); melting: Feistel and Wagner 2006
 *   (docs/sources.md#feistel-wagner-2006); ice: docs/sources.md#crc-handbook
 * @example
 * iceNeeded({ ...wort, fromC: celsius(30), toC: celsius(20), iceC: celsius(-18), bathC: celsius(5) }); // 1.9 for 20 kg
 */
export function iceNeeded({
  massKg,
  plato,
  vesselHeatCapacity,
  fromC,
  toC,
  iceC,
  bathC,
}: {
  readonly massKg: Kilograms;
  readonly plato: DegreesPlato;
  readonly vesselHeatCapacity: JoulesPerKelvin;
  readonly fromC: Celsius;
  readonly toC: Celsius;
  readonly iceC: Celsius;
  readonly bathC: Celsius;
}): Kilograms {
  requireInRange("mass", massKg, kilograms.range);
  requireInRange("extract", plato, WORT_HEAT_RANGE.plato);
  requireInRange("vessel heat capacity", vesselHeatCapacity, joulesPerKelvin.range);
  requireInRange("start temperature", fromC, WORT_HEAT_RANGE.celsius);
  requireInRange("target temperature", toC, WORT_HEAT_RANGE.celsius);
  requireInRange("ice temperature", iceC, ICE_RANGE);
  requireInRange("bath temperature", bathC, { unit: "°C", min: 0, max: toC });
  const specificHeat = heatCapacityAtZero(plato) + (heatCapacitySlope(plato) * (fromC + toC)) / 2;
  const heatJ = (massKg * specificHeat + vesselHeatCapacity) * Math.max(0, fromC - toC);
  const iceKg = heatJ / (ICE_MELTING_J_PER_KG - ICE_HEAT_CAPACITY * iceC + WATER_HEAT_CAPACITY * bathC);
  if (iceKg > kilograms.range.max) throw new OutOfRangeError("ice", iceKg, kilograms.range);
  return kilograms(iceKg);
}
