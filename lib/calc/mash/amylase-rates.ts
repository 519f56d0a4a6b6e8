const GAS_J_PER_MOL_K = 8.314462618;
const ZERO_CELSIUS_K = 273.15;
const AT_65_PER_K = 1 / (65 + ZERO_CELSIUS_K);

/** Share of the α-amylase that dies a minute: 6.9e30 s⁻¹, 224.2 kJ/mol (docs/sources.md#koljonen-1995, from memory). */
const LN_ALPHA_DEATH = Math.log(60 * 6.9e30);
const ALPHA_DEATH_K = 224_200 / GAS_J_PER_MOL_K;

/**
 * Share of the β-amylase that dies a minute at 65 °C: 17 % are left after 30 minutes in a mash of 2.5 L/kg
 * (docs/sources.md#muller-1990). A thin suspension loses it faster; 410.7 kJ/mol is from there, from memory.
 */
const BETA_DEATH_AT_65 = -Math.log(0.17) / 30;
const BETA_DEATH_K = 410_700 / GAS_J_PER_MOL_K;

/** Gelatinisation above 60 °C: 3.1e14 s⁻¹, 108.3 kJ/mol (docs/sources.md#brandam-2003, from memory). */
const LN_GELATINISING = Math.log(60 * 3.1e14);
const GELATINISING_K = 108_300 / GAS_J_PER_MOL_K;

/** Half of the granules open at 59 °C, nine tenths of them between 54 and 64 °C (docs/sources.md#potter-coulter). */
const GRANULES_MIDDLE_C = 59;
const GRANULES_WIDTH_K = 1.75;

/** What hydrolysis gains with temperature while the enzymes live: about the double in 11 K, from memory. */
const HYDROLYSIS_K = 50_000 / GAS_J_PER_MOL_K;

/**
 * Hydrolysis at 65 °C with fresh enzymes, per minute, and the share that α-amylase turns into sugar at once. Fitted here
 * to the attenuation limits of docs/sources.md#chandrasekhar-mash after an hour at 65, 70, 75 and 80 °C and to the like
 * worts of half an hour at 62.7 °C and an hour at 65.5 °C (docs/sources.md#harris-macwilliam-1961). Liquefaction by
 * α-amylase itself is too quick to be seen in them and is set.
 */
export const HYDROLYSIS_AT_65 = {
  starchByAlpha: 5,
  starchByBeta: 15,
  sugarShareByAlpha: 0.17,
  dextrinByAlpha: 0.011,
  dextrinByBeta: 0.028,
} as const;

/** Rates at one temperature, per minute. */
export interface AmylaseRates {
  readonly alphaDeath: number;
  readonly betaDeath: number;
  readonly gelatinising: number;
  /** Share of the granules that stay closed at this temperature however long they wait. */
  readonly closedShare: number;
  /** Hydrolysis over that at 65 °C by the same enzymes. */
  readonly pace: number;
}

/**
 * Gives the rates at one temperature by Arrhenius' law.
 *
 * @returns Rates per minute.
 */
export function amylaseRates(celsius: number): AmylaseRates {
  const perK = 1 / (celsius + ZERO_CELSIUS_K);
  const sinceAt65 = AT_65_PER_K - perK;
  return {
    alphaDeath: Math.exp(LN_ALPHA_DEATH - ALPHA_DEATH_K * perK),
    betaDeath: BETA_DEATH_AT_65 * Math.exp(BETA_DEATH_K * sinceAt65),
    gelatinising: Math.exp(LN_GELATINISING - GELATINISING_K * perK),
    closedShare: 1 / (1 + Math.exp((celsius - GRANULES_MIDDLE_C) / GRANULES_WIDTH_K)),
    pace: Math.exp(HYDROLYSIS_K * sinceAt65),
  };
}
