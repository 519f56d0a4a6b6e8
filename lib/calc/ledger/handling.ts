/**
 * How long the hands take, in minutes, and how hot the sparge water is. Common practice, no source: the run sheet is
 * replanned from what really happens.
 */
export const HANDLING = {
  prepareMin: 20,
  doughInMin: 10,
  drainMin: 15,
  batchSpargeMin: 30,
  continuousSpargeMin: 60,
  pourOverSpargeMin: 20,
  transferMin: 15,
  cleanMin: 40,
  /** Hotter sparge water draws tannin from the husk. */
  spargeC: 76,
  /** A chiller stops being worth running this close to its coolant; the fermenter does the rest. */
  chillApproachK: 4,
} as const;
