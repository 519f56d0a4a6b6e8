import { minutes, type Minutes } from "../units";
import { ISOMERISATION_KELVIN, ZERO_CELSIUS_K } from "./isomerisation-rates";
import { requireCurve, type TemperatureCurve } from "./temperature-curve";

const PER_KELVIN_AT_100 = 1 / (100 + ZERO_CELSIUS_K);

/** Longest rise or fall that one five-point rule spans, K. */
const WIDEST_PIECE_K = 25;
/** Up to here three points are enough, and up to a hundredth of a kelvin one. */
const THREE_POINT_K = 8;
const ONE_POINT_K = 0.01;

/**
 * Finds how many minutes at 100 °C isomerise as much as a temperature curve does: ∫ k1(T)/k1(100 °C) dt.
 *
 * With it, every utilisation formula for the boil also serves hops in a stand or on the way down.
 *
 * @param a.curve - Minutes and °C, by rising minute, with straight lines between.
 * @returns Equivalent time, min, within 1e-6 of the integral.
 * @validRange 0 to 110 °C. The rate was studied at 90 to 130 °C and is carried on below by Arrhenius' law; everything
 *   under 50 °C adds next to nothing.
 * @throws {@link OutOfRangeError} when the curve runs back in time or leaves the valid range.
 * @source Malowicki and Shellhammer 2005, J. Agric. Food Chem. 53:4434 (docs/sources.md#malowicki-shellhammer-2005)
 * @example
 * equivalentBoilMinutes({ curve: [[0, 80], [30, 80]] }); // 4.95
 */
export function equivalentBoilMinutes({ curve }: { readonly curve: TemperatureCurve }): Minutes {
  requireCurve(curve);
  let sum = 0;
  let before = curve[0];
  for (const point of curve) {
    if (before !== undefined && point[0] > before[0]) sum += (point[0] - before[0]) * meanRate(before[1], point[1]);
    before = point;
  }
  return minutes(sum);
}

// k1(T) over k1(100 °C).
const rate = (celsius: number): number =>
  Math.exp(ISOMERISATION_KELVIN * (PER_KELVIN_AT_100 - 1 / (celsius + ZERO_CELSIUS_K)));

// Mean over a straight line in time, by Gauss and Legendre with as many points as the rise needs.
function meanRate(fromC: number, toC: number): number {
  const riseK = toC - fromC;
  const size = Math.abs(riseK);
  if (size <= ONE_POINT_K) return rate(fromC + riseK / 2);
  if (size <= THREE_POINT_K) return threePoints(fromC + riseK / 2, riseK / 2);
  const pieces = Math.ceil(size / WIDEST_PIECE_K);
  const halfK = riseK / pieces / 2;
  let sum = 0;
  for (let i = 0; i < pieces; i++) sum += fivePoints(fromC + (2 * i + 1) * halfK, halfK);
  return sum / pieces;
}

const THREE = Math.sqrt(3 / 5);

const threePoints = (middleC: number, halfK: number): number =>
  (5 * rate(middleC - THREE * halfK) + 8 * rate(middleC) + 5 * rate(middleC + THREE * halfK)) / 18;

const FIVE_INNER = Math.sqrt(5 - 2 * Math.sqrt(10 / 7)) / 3;
const FIVE_OUTER = Math.sqrt(5 + 2 * Math.sqrt(10 / 7)) / 3;
const WEIGHT_INNER = (322 + 13 * Math.sqrt(70)) / 1800;
const WEIGHT_OUTER = (322 - 13 * Math.sqrt(70)) / 1800;

const fivePoints = (middleC: number, halfK: number): number =>
  (64 / 225) * rate(middleC) +
  WEIGHT_INNER * (rate(middleC - FIVE_INNER * halfK) + rate(middleC + FIVE_INNER * halfK)) +
  WEIGHT_OUTER * (rate(middleC - FIVE_OUTER * halfK) + rate(middleC + FIVE_OUTER * halfK));
