/** Extract that stays, speed and middle of a fermentation: °P, natural log of 1/day, days. */
export type CurveParameters = readonly [final: number, logRate: number, middle: number];

/**
 * ln(1 + e^x) without overflow.
 *
 * @returns The logarithm, never below zero.
 */
export const softplus = (x: number): number => Math.max(0, x) + Math.log1p(Math.exp(-Math.abs(x)));
const sigmoid = (x: number): number => 1 / (1 + Math.exp(-x));

/**
 * Share of the fall that is still to come: a logistic that begins at exactly 1.
 *
 * (1 + e^(−BM)) / (1 + e^(B(t − M))). Far before its middle it is flat, the lag; with the middle before the start it
 * comes near to a plain exponential.
 *
 * @returns Share, 1 at day 0, towards 0.
 */
export function shareToCome(day: number, rate: number, middle: number): number {
  return Math.exp(softplus(-rate * middle) - softplus(rate * (day - middle)));
}

/**
 * Apparent extract on a day, and how it moves with each parameter.
 *
 * @returns °P and its derivatives by final extract, log rate and middle.
 */
export function curveAt(
  day: number,
  originalPlato: number,
  [final, logRate, middle]: CurveParameters,
): { readonly plato: number; readonly slopes: CurveParameters } {
  const rate = Math.exp(logRate);
  const share = shareToCome(day, rate, middle);
  const fall = (originalPlato - final) * share;
  const atStart = sigmoid(-rate * middle);
  const now = sigmoid(rate * (day - middle));
  const byRate = -middle * atStart - (day - middle) * now;
  const byMiddle = rate * (now - atStart);
  return { plato: final + fall, slopes: [1 - share, fall * byRate * rate, fall * byMiddle] };
}

/**
 * Day on which the extract has come within a distance of its end, and how that day moves with each parameter.
 *
 * @returns Day and derivatives; the distance must be smaller than the whole fall.
 */
export function dayWithin(
  distance: number,
  originalPlato: number,
  [final, logRate, middle]: CurveParameters,
): { readonly day: number; readonly slopes: CurveParameters } {
  const rate = Math.exp(logRate);
  // ln(e^x − 1) of x = ln(fall/distance) + ln(1 + e^(−BM)).
  const x = Math.log((originalPlato - final) / distance) + softplus(-rate * middle);
  const steep = 1 / -Math.expm1(-x);
  const beyond = x + Math.log(-Math.expm1(-x));
  const atStart = sigmoid(-rate * middle);
  const byLogRate = (-beyond - steep * rate * middle * atStart) / rate;
  return {
    day: middle + beyond / rate,
    slopes: [-steep / ((originalPlato - final) * rate), byLogRate, 1 - steep * atStart],
  };
}
