/** Volumes in beer at psi gauge and °F; fit of deLange 2011 to ASBC Beer-13, from memory (docs/sources.md#delange-2011). */
export const VOLUMES_OF_PRESSURE = [
  { psi: 12, fahrenheit: 38, volumes: 2.576 },
  { psi: 12, fahrenheit: 40, volumes: 2.481 },
  { psi: 10, fahrenheit: 34, volumes: 2.571 },
  { psi: 15, fahrenheit: 45, volumes: 2.517 },
  { psi: 30, fahrenheit: 70, volumes: 2.479 },
] as const;

/**
 * psi gauge for volumes at °F, rows of the printed force-carbonation table (docs/sources.md#asbc-beer-13). The table, the fit
 * and Henry's law agree within 0.05 volumes up to 50 °F; no one of them is the truth to more than that.
 */
export const FORCE_CARBONATION = [
  { psi: 8.2, fahrenheit: 32, volumes: 2.5 },
  { psi: 12.3, fahrenheit: 40, volumes: 2.5 },
  { psi: 6.8, fahrenheit: 40, volumes: 2.0 },
  { psi: 16.3, fahrenheit: 50, volumes: 2.4 },
] as const;

/** Henry's law as the German handbooks print it (docs/sources.md#henry-co2), g/L, worked by hand. */
export const HENRY = [
  { gaugeBar: 0, celsius: 20, gramsPerLitre: 1.658 },
  { gaugeBar: 0, celsius: 4, gramsPerLitre: 2.776 },
  { gaugeBar: 2, celsius: 20, gramsPerLitre: 4.931 },
] as const;

/** Grams of CO2 from a gram of sugar, stoichiometry by hand. */
export const GAS_FROM_SUGAR = [
  { sugar: "sucrose", gramsPerGram: 0.5143 },
  { sugar: "dextroseMonohydrate", gramsPerGram: 0.4442 },
  { sugar: "dextroseAnhydrous", gramsPerGram: 0.4886 },
] as const;
