/** Heat of vaporisation of water, kJ/kg: NIST/ASME steam tables, saturation by temperature (docs/sources.md#nist-steam-tables). */
export const LATENT_HEAT_TABLE = [
  { at: 0.01, kJPerKg: 2500.9 },
  { at: 5, kJPerKg: 2489.1 },
  { at: 10, kJPerKg: 2477.2 },
  { at: 15, kJPerKg: 2465.3 },
  { at: 20, kJPerKg: 2453.5 },
  { at: 25, kJPerKg: 2441.7 },
  { at: 30, kJPerKg: 2429.8 },
  { at: 40, kJPerKg: 2406.0 },
  { at: 50, kJPerKg: 2382.0 },
  { at: 60, kJPerKg: 2357.6 },
  { at: 70, kJPerKg: 2333.0 },
  { at: 80, kJPerKg: 2308.0 },
  { at: 90, kJPerKg: 2282.5 },
  { at: 100, kJPerKg: 2256.4 },
] as const;

/** Vapour pressure of water, MPa, from the same tables. */
export const VAPOUR_PRESSURE_TABLE = [
  { at: 20, megapascals: 0.00234 },
  { at: 40, megapascals: 0.00739 },
  { at: 60, megapascals: 0.01995 },
  { at: 80, megapascals: 0.04741 },
  { at: 90, megapascals: 0.07018 },
] as const;

/** Malt by moisture, %: specific heat over water's and rise by the heat of wetting, °C: Brewing Room Book 1984/85. */
export const MALT_TABLE = [
  { moisture: 0, heatRatio: 0.38, riseC: 3.0 },
  { moisture: 1, heatRatio: 0.38, riseC: 2.8 },
  { moisture: 2, heatRatio: 0.39, riseC: 2.3 },
  { moisture: 4, heatRatio: 0.4, riseC: 1.5 },
  { moisture: 6, heatRatio: 0.41, riseC: 1.3 },
  { moisture: 8, heatRatio: 0.42, riseC: 1.0 },
] as const;
