import { findRoot } from "../numerics";
import { fUpperTail } from "../statistics";
import type { MeanSquares } from "./mean-squares";

/** Confidence limits of the correlation of single scores. */
export interface Limits {
  readonly low: number;
  readonly high: number;
}

/**
 * Limits where the judges' severity is no part of the error, or all of it: forms 1 and 3.
 *
 * @returns Limits for single scores.
 * @source Shrout and Fleiss 1979, equations 7 and 9 (docs/sources.md#shrout-fleiss-1979)
 */
export function consistencyLimits(a: {
  readonly f: number;
  readonly df1: number;
  readonly df2: number;
  readonly k: number;
  readonly confidence: number;
}): Limits {
  const tail = (1 - a.confidence) / 2;
  const lower = a.f / fQuantile(tail, a.df1, a.df2);
  const upper = a.f * fQuantile(tail, a.df2, a.df1);
  return { low: (lower - 1) / (lower + a.k - 1), high: (upper - 1) / (upper + a.k - 1) };
}

/**
 * Limits where the judges' severity is a part of the error: form 2. The error mixes two mean squares, whose degrees of freedom
 * are approximated (Satterthwaite).
 *
 * @returns Limits for single scores.
 * @source Shrout and Fleiss 1979, equation 8; McGraw and Wong 1996 (docs/sources.md#mcgraw-wong-1996)
 */
export function agreementLimits(a: {
  readonly squares: MeanSquares;
  readonly n: number;
  readonly k: number;
  readonly confidence: number;
}): Limits {
  const { n, k } = a;
  const { entries: b, judges: j, residual: e } = a.squares;
  // The error grows with the correlation; below zero there is no such error, and the residual's freedom is left.
  const icc = Math.max(0, (b - e) / (b + (k - 1) * e + (k * (j - e)) / n));
  const ofJudges = (k * icc * j) / e;
  const ofRest = n * (1 + (k - 1) * icc) - k * icc;
  const df = ((k - 1) * (n - 1) * (ofJudges + ofRest) ** 2) / ((n - 1) * ofJudges ** 2 + ofRest ** 2);
  const tail = (1 - a.confidence) / 2;
  const lower = fQuantile(tail, n - 1, df);
  const upper = fQuantile(tail, df, n - 1);
  const error = k * j + (k * n - k - n) * e;
  return {
    low: (n * (b - lower * e)) / (lower * error + n * b),
    high: (n * (upper * b - e)) / (error + n * upper * b),
  };
}

// Found on a scale of logarithms, because with one degree of freedom the answer may be in the thousands.
function fQuantile(tail: number, df1: number, df2: number): number {
  const root = findRoot({
    f: (x) => fUpperTail({ f: Math.exp(x), df1, df2 }) - tail,
    low: -20,
    high: 20,
    tolerance: 1e-12,
  });
  return Math.exp(root.x);
}
