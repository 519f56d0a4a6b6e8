import { requireInRange } from "../errors";
import type { Celsius } from "../units";

export const CARBONATE_TEMPERATURE_RANGE = { unit: "°C", min: 0, max: 90 } as const;

/** Negative decimal logarithms of the constants of the carbonate system, at vanishing ionic strength. */
export interface CarbonateConstants {
  /** CO2 + H2O = H + HCO3; all dissolved carbon dioxide counts as the acid. */
  readonly pk1: number;
  /** HCO3 = H + CO3. */
  readonly pk2: number;
  /** Dissolved carbon dioxide, mol/kg, from its pressure, atm. */
  readonly pkHenry: number;
  /** Solubility product of calcite. */
  readonly pkCalcite: number;
}

/**
 * Gives the equilibrium constants of carbon dioxide, bicarbonate, carbonate and calcite in water.
 *
 * @param celsius - Temperature of the water, °C.
 * @returns Negative decimal logarithms, within 0.02 of the measurements.
 * @validRange 0 to 90 °C.
 * @throws {@link OutOfRangeError} when `celsius` is outside the valid range.
 * @source Plummer and Busenberg 1982, Geochim. Cosmochim. Acta 46:1011 (docs/sources.md#plummer-busenberg-1982)
 * @example
 * carbonateConstants(celsius(25)); // { pk1: 6.352, pk2: 10.329, pkHenry: 1.468, pkCalcite: 8.480 }
 */
export function carbonateConstants(celsius: Celsius): CarbonateConstants {
  requireInRange("water temperature", celsius, CARBONATE_TEMPERATURE_RANGE);
  const t = celsius + 273.15;
  const log = Math.log10(t);
  return {
    pk1: 356.3094 + 0.06091964 * t - 21834.37 / t - 126.8339 * log + 1684915 / t ** 2,
    pk2: 107.8871 + 0.03252849 * t - 5151.79 / t - 38.92561 * log + 563713.9 / t ** 2,
    pkHenry: -108.3865 - 0.01985076 * t + 6919.53 / t + 40.45154 * log - 669365 / t ** 2,
    pkCalcite: 171.9065 + 0.077993 * t - 2839.319 / t - 71.595 * log,
  };
}
