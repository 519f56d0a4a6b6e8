/** Absolute pressure of the air in the fit, psi. */
const AIR_PSI = 14.695;
const BAR_PER_PSI = 0.0689475729;

/** The fit's constant, volumes: it would give a vacuum a little less than none. */
export const FIT_OFFSET = 0.003342;

/** Gauge pressure of a perfect vacuum in the fit, bar. */
export const VACUUM_BAR = -AIR_PSI * BAR_PER_PSI;

/**
 * Volumes of CO2 that a bar of absolute pressure dissolves, without a range check (docs/sources.md#delange-2011).
 *
 * The exponent (t°F − 32)/43.11 is written in °C.
 *
 * @returns Volumes for each bar.
 */
export const volumesPerBar = (celsius: number): number =>
  (0.01821 + 0.090115 * Math.exp((-1.8 * celsius) / 43.11)) / BAR_PER_PSI;
