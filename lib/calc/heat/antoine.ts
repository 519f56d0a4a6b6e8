// Antoine equation of water for 0 to 100 °C, mmHg and °C (docs/sources.md#antoine-water).
const A = 8.07131;
const B = 1730.63;
const C = 233.426;

const KPA_PER_MMHG = 101.325 / 760;
const LN_10 = Math.LN10;

/**
 * Vapour pressure over water without a range check, for inner loops.
 *
 * @returns Pressure, kPa.
 */
export const antoinePressure = (celsius: number): number => KPA_PER_MMHG * Math.exp(LN_10 * (A - B / (C + celsius)));

/**
 * Temperature at which water has a vapour pressure, without a range check.
 *
 * @returns Temperature, °C.
 */
export const antoineTemperature = (kilopascals: number): number => B / (A - Math.log10(kilopascals / KPA_PER_MMHG)) - C;
