import { curveAt, shareToCome, type CurveParameters } from "./attenuation-curve";
import { solveNormal } from "./normal-equations";

/** A logged gravity. */
export interface GravityPoint {
  readonly day: number;
  readonly plato: number;
  /** Standard uncertainty, °P. */
  readonly sd: number;
}

export interface CurveData {
  readonly originalPlato: number;
  readonly points: readonly GravityPoint[];
  /** What is known of the end beforehand; null where nothing is. */
  readonly expectedFinal: { readonly plato: number; readonly sd: number } | null;
}

export interface CurveFit {
  readonly parameters: CurveParameters;
  /** JᵀJ of the weighted residuals: the inverse of the covariance. */
  readonly information: readonly (readonly number[])[];
  readonly chiSquared: number;
}

const MAX_STEPS = 200;

/** Widest spans that any fermentation has: a rate of 0.02 to 30 a day, a middle from well before the start to half a year. */
const LOG_RATE = { min: Math.log(0.02), max: Math.log(30) } as const;
const MIDDLE = { min: -30, max: 200 } as const;

/**
 * Fits the curve by weighted least squares: a coarse grid, then Gauss and Newton with damping (Levenberg, Marquardt).
 *
 * @returns Parameters, information and χ², or null where the steps did not settle or the points do not fix the curve.
 */
export function fitCurve(data: CurveData): CurveFit | null {
  let parameters = bestOfGrid(data);
  let state = evaluate(data, parameters);
  let damping = 1e-3;
  for (let step = 0; step < MAX_STEPS; step += 1) {
    const move = solveNormal(damped(state.information, damping), state.gradient);
    if (move === null) return null;
    const tried = moved(parameters, move);
    const next = evaluate(data, tried);
    const gain = state.chiSquared - next.chiSquared;
    if (gain >= 0) {
      parameters = tried;
      const settled = gain <= 1e-12 * (1 + next.chiSquared) && isSmall(move, state.information);
      state = next;
      if (settled) return isInside(parameters) ? { parameters, ...state } : null;
      damping = Math.max(1e-12, damping / 5);
    } else {
      damping *= 4;
      // Not even the shortest step helps: this is the bottom to the last digit.
      if (damping > 1e12) return isInside(parameters) ? { parameters, ...state } : null;
    }
  }
  return null;
}

interface Evaluation {
  readonly chiSquared: number;
  readonly gradient: readonly number[];
  readonly information: readonly (readonly number[])[];
}

function evaluate(data: CurveData, parameters: CurveParameters): Evaluation {
  const gradient = [0, 0, 0];
  const information = [
    [0, 0, 0],
    [0, 0, 0],
    [0, 0, 0],
  ];
  let chiSquared = 0;
  const add = (residual: number, slopes: readonly number[], sd: number): void => {
    chiSquared += (residual / sd) ** 2;
    slopes.forEach((slope, row) => {
      gradient[row] = (gradient[row] ?? 0) + (slope * residual) / sd ** 2;
      const line = information[row];
      if (line !== undefined)
        slopes.forEach((other, column) => (line[column] = (line[column] ?? 0) + (slope * other) / sd ** 2));
    });
  };
  for (const { day, plato, sd } of data.points) {
    const at = curveAt(day, data.originalPlato, parameters);
    add(plato - at.plato, at.slopes, sd);
  }
  const expected = data.expectedFinal;
  if (expected !== null) add(expected.plato - parameters[0], [1, 0, 0], expected.sd);
  return { chiSquared, gradient, information };
}

const damped = (information: readonly (readonly number[])[], damping: number): number[][] =>
  information.map((line, row) => line.map((value, column) => (row === column ? value * (1 + damping) : value)));

function moved([final, logRate, middle]: CurveParameters, move: readonly number[]): CurveParameters {
  const within = (value: number, { min, max }: { readonly min: number; readonly max: number }): number =>
    Math.min(max, Math.max(min, value));
  return [final + (move[0] ?? 0), within(logRate + (move[1] ?? 0), LOG_RATE), within(middle + (move[2] ?? 0), MIDDLE)];
}

const isInside = ([, logRate, middle]: CurveParameters): boolean =>
  logRate > LOG_RATE.min && logRate < LOG_RATE.max && middle > MIDDLE.min && middle < MIDDLE.max;

/** A step of less than a thousandth of what the points can tell. */
const isSmall = (move: readonly number[], information: readonly (readonly number[])[]): boolean =>
  move.every((part, row) => part ** 2 * (information[row]?.[row] ?? 0) < 1e-6);

/** For each rate and middle the best final extract is a weighted mean, for the curve is straight in it. */
function bestOfGrid(data: CurveData): CurveParameters {
  const last = Math.max(...data.points.map(({ day }) => day));
  const shares = new Float64Array(data.points.length);
  let best: CurveParameters = [0, 0, 1];
  let least = Infinity;
  for (let i = 0; i < 10; i += 1) {
    const rate = 0.1 * 1.8 ** i;
    for (let k = -2; k <= 12; k += 2) {
      const middle = (last * k) / 10;
      data.points.forEach(({ day }, row) => (shares[row] = shareToCome(day, rate, middle)));
      const final = bestFinal(data, shares);
      const chiSquared = misfit(data, shares, final);
      if (chiSquared < least) [least, best] = [chiSquared, [final, Math.log(rate), middle]];
    }
  }
  return best;
}

function bestFinal({ originalPlato, points, expectedFinal }: CurveData, shares: Float64Array): number {
  let weights = expectedFinal === null ? 1e-9 : expectedFinal.sd ** -2;
  let sum = weights * (expectedFinal?.plato ?? originalPlato / 4);
  points.forEach(({ plato, sd }, row) => {
    const share = shares[row] ?? 0;
    const weight = (1 - share) / sd ** 2;
    weights += weight * (1 - share);
    sum += weight * (plato - originalPlato * share);
  });
  return sum / weights;
}

function misfit({ originalPlato, points, expectedFinal }: CurveData, shares: Float64Array, final: number): number {
  let sum = expectedFinal === null ? 0 : ((expectedFinal.plato - final) / expectedFinal.sd) ** 2;
  points.forEach(({ plato, sd }, row) => {
    sum += ((plato - final - (originalPlato - final) * (shares[row] ?? 0)) / sd) ** 2;
  });
  return sum;
}
