import { requireInRange } from "../errors";
import { defineQuantity, type Celsius, type Quantity } from "../units";

export type JoulesPerKilogram = Quantity<"J/kg">;

const joulesPerKilogram = defineQuantity("latent heat", { unit: "J/kg", min: 0, max: 3_000_000 });

export const LATENT_HEAT_RANGE = { unit: "°C", min: 0, max: 102 } as const;

/**
 * Gives the heat that turns a kilogram of water into steam at the same temperature.
 *
 * @param celsius - Temperature, °C.
 * @returns Latent heat, J/kg: a cubic through the steam tables, within 100 J/kg of them.
 * @validRange 0 to 102 °C.
 * @throws {@link OutOfRangeError} when `celsius` is outside the valid range.
 * @source NIST/ASME steam tables, saturation by temperature (docs/sources.md#nist-steam-tables)
 * @example
 * latentHeat(celsius(100)); // 2 256 400
 */
export function latentHeat(celsius: Celsius): JoulesPerKilogram {
  return joulesPerKilogram(latentHeatOf(requireInRange("temperature", celsius, LATENT_HEAT_RANGE)));
}

/**
 * The same without a range check, for inner loops.
 *
 * @returns Latent heat, J/kg.
 */
export const latentHeatOf = (celsius: number): number =>
  2_500_925 - celsius * (2376.08 - celsius * (0.548582 - celsius * 0.01240432));
