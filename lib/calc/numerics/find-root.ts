import { requireInRange } from "../errors";

export type Root =
  | { readonly ok: true; readonly x: number; readonly evaluations: number }
  | {
      readonly ok: false;
      /** The ends do not differ in sign, or a value on the way was not finite or used up the evaluations. */
      readonly reason: "not-bracketed" | "did-not-converge";
      /** The best point so far. */
      readonly x: number;
      readonly evaluations: number;
    };

export const ROOT_TOLERANCE_RANGE = { unit: "", min: 0, max: 1e6 } as const;

const FINITE = { unit: "", min: -1e300, max: 1e300 } as const;
const MAX_EVALUATIONS = 200;

/**
 * Finds a root between two points where a function has opposite signs (Brent).
 *
 * Inverse quadratic interpolation while it helps, bisection when it does not, so the bracket never widens.
 *
 * @param a.f - The function; called about ten times for a smooth one.
 * @param a.low - One end of the bracket.
 * @param a.high - The other end, above `low`.
 * @param a.tolerance - Largest distance of the answer from a change of sign, in the unit of x; 0 asks for the last bit.
 * @returns The root, or why there is none to give.
 * @validRange Finite ends with `low` below `high`.
 * @throws {@link OutOfRangeError} when an end is not finite, the ends are out of order or the tolerance is negative.
 * @source Brent 1973, Algorithms for Minimization without Derivatives, chapter 4 (docs/sources.md#brent-1973)
 * @example
 * findRoot({ f: (x) => x * x - 2, low: 0, high: 2, tolerance: 1e-12 }); // { ok: true, x: 1.41421356237…, … }
 */
export function findRoot(a: {
  readonly f: (x: number) => number;
  readonly low: number;
  readonly high: number;
  readonly tolerance: number;
}): Root {
  requireInRange("low end", a.low, FINITE);
  requireInRange("high end", a.high, { ...FINITE, min: a.low });
  requireInRange("tolerance", a.tolerance, ROOT_TOLERANCE_RANGE);
  const atLow = a.f(a.low);
  if (atLow === 0) return { ok: true, x: a.low, evaluations: 1 };
  const atHigh = a.f(a.high);
  if (atHigh === 0) return { ok: true, x: a.high, evaluations: 2 };
  // Written this way round so that NaN counts as unbracketed.
  if (!(atLow < 0 ? atHigh > 0 : atLow > 0 && atHigh < 0)) {
    return {
      ok: false,
      reason: "not-bracketed",
      x: Math.abs(atLow) <= Math.abs(atHigh) ? a.low : a.high,
      evaluations: 2,
    };
  }
  return brent(a.f, a.low, atLow, a.high, atHigh, a.tolerance);
}

// `b` is the best point, `a` the one before, and the root lies between `b` and `c`.
function brent(
  f: (x: number) => number,
  low: number,
  atLow: number,
  high: number,
  atHigh: number,
  tolerance: number,
): Root {
  let a = low;
  let fa = atLow;
  let b = high;
  let fb = atHigh;
  let c = a;
  let fc = fa;
  let step = b - a;
  let stepBefore = step;
  for (let evaluations = 2; evaluations < MAX_EVALUATIONS && !Number.isNaN(fb); evaluations++) {
    if (Math.abs(fc) < Math.abs(fb)) {
      a = b;
      b = c;
      c = a;
      fa = fb;
      fb = fc;
      fc = fa;
    }
    const near = 2 * Number.EPSILON * Math.abs(b) + tolerance / 2;
    const half = (c - b) / 2;
    if (Math.abs(half) <= near || fb === 0) return { ok: true, x: b, evaluations };

    const guess = Math.abs(fa) > Math.abs(fb) && Math.abs(stepBefore) >= near ? interpolate(a, fa, b, fb, c, fc) : NaN;
    // Kept only well inside the bracket, and while every second step at least halves.
    const longest = Math.min(1.5 * Math.abs(half), Math.abs(stepBefore) / 2);
    const keep = guess / half > 0 && Math.abs(guess) < longest;
    stepBefore = keep ? step : half;
    step = keep ? guess : half;

    a = b;
    fa = fb;
    b += Math.abs(step) > near ? step : Math.sign(half) * near;
    fb = f(b);
    if (fb > 0 === fc > 0) {
      c = a;
      fc = fa;
      stepBefore = step = b - a;
    }
  }
  return { ok: false, reason: "did-not-converge", x: b, evaluations: MAX_EVALUATIONS };
}

// Step from `b` to the root of the inverse quadratic through three points, or of the secant when two coincide.
function interpolate(a: number, fa: number, b: number, fb: number, c: number, fc: number): number {
  const s = fb / fa;
  if (a === c) return ((c - b) * s) / (s - 1);
  const q = fa / fc;
  const r = fb / fc;
  const p = s * ((c - b) * q * (q - r) - (b - a) * (r - 1));
  return -p / ((q - 1) * (r - 1) * (s - 1));
}
