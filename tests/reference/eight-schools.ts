/** Gelman and others 2013, table 5.2: effects of coaching in eight schools and their standard errors. */
export const EIGHT_SCHOOLS = [
  { estimate: 28, standardError: 15 },
  { estimate: 8, standardError: 10 },
  { estimate: -3, standardError: 16 },
  { estimate: 7, standardError: 11 },
  { estimate: -1, standardError: 9 },
  { estimate: 1, standardError: 11 },
  { estimate: 18, standardError: 10 },
  { estimate: 12, standardError: 18 },
] as const;

/** The same, table 5.3: posterior medians of 200 simulation draws, as printed (from memory). */
export const EIGHT_SCHOOLS_MEDIANS = [10, 8, 7, 8, 5, 6, 10, 8] as const;
