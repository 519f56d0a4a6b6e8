/**
 * Tinseth 1997, utilisation by gravity and minutes, three decimals as in the published table (docs/sources.md#tinseth-1997).
 * The rows for 60 min are recalled from the table; the two others are worked by hand with its equation.
 */
export const TINSETH_TABLE = [
  { sg: 1.04, minutes: 60, utilisation: 0.252 },
  { sg: 1.05, minutes: 60, utilisation: 0.231 },
  { sg: 1.06, minutes: 60, utilisation: 0.211 },
  { sg: 1.07, minutes: 60, utilisation: 0.193 },
  { sg: 1.08, minutes: 60, utilisation: 0.176 },
  { sg: 1.09, minutes: 60, utilisation: 0.161 },
  { sg: 1.05, minutes: 5, utilisation: 0.046 },
  { sg: 1.06, minutes: 15, utilisation: 0.105 },
] as const;

/** Rager 1990, step table, %; from memory (docs/sources.md#rager-1990). */
export const RAGER_STEPS = [
  { fromMin: 11, toMin: 15, percent: 8.0 },
  { fromMin: 16, toMin: 20, percent: 10.1 },
  { fromMin: 26, toMin: 30, percent: 15.3 },
  { fromMin: 31, toMin: 35, percent: 18.8 },
  { fromMin: 41, toMin: 45, percent: 26.9 },
  { fromMin: 51, toMin: 60, percent: 30.0 },
] as const;

/** The fit of that table, %U = 18.11 + 13.86 tanh((t − 31.32)/18.27), worked by hand. */
export const RAGER_FIT = [
  { minutes: 10, percent: 6.7 },
  { minutes: 20, percent: 10.48 },
  { minutes: 45, percent: 26.9 },
  { minutes: 60, percent: 30.82 },
] as const;
