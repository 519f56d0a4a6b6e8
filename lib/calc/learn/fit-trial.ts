import { requireInRange } from "../errors";
import { minimiseConstrained } from "../numerics";
import { cholesky, inverse } from "../numerics/cholesky";
import { derivatives } from "../numerics/derivatives";
import { chiSquaredUpperTail } from "../statistics";
import type { Estimate, Stated } from "./estimate";

/** An unknown of a trial. What was known of it before counts as one more reading. */
export interface Unknown {
  readonly start: number;
  /** Size by which a step is measured. */
  readonly scale: number;
  readonly prior?: Stated;
}

/** How the readings fit one another. */
export interface Scatter {
  /** Sum of squared residuals, each over its stated uncertainty. */
  readonly chiSquared: number;
  /** Readings more than unknowns; 0 where nothing is left over to compare with. */
  readonly df: number;
  /** How probable residuals as large as these are, if the stated uncertainties are right; 1 where nothing is left over. */
  readonly p: number;
  /** By how much the standard errors were widened, because the readings scatter more than stated; 1 where they do not. */
  readonly widened: number;
}

export type TrialFit =
  | {
      readonly ok: true;
      readonly estimates: readonly Estimate[];
      readonly correlation: (a: number, b: number) => number;
      /** Residuals of the readings, each over its uncertainty, in their order. */
      readonly residuals: readonly number[];
      readonly scatter: Scatter;
    }
  | { readonly ok: false; readonly reason: "not-told" | "did-not-converge" };

/** Residuals that are rarer than this are not put down to chance. */
const RARE = 0.01;
/** Less of a direction than this is rounding: the readings do not tell it. */
const TOLD = 1e-10;

/**
 * Fits the unknowns of a trial: least squares by steps of Gauss and Newton, with what was known before as readings.
 *
 * Standard errors are those of the stated uncertainties. Where the residuals are rarer than one in a hundred under
 * them, all errors are widened by the Birge ratio, √(χ²/df).
 *
 * @param residuals - Residual of each reading over its uncertainty, at given unknowns.
 * @returns Estimates with errors; or that the readings do not tell the unknowns apart.
 * @source Marquardt 1963 (docs/sources.md#marquardt-1963); Birge 1932 (docs/sources.md#birge-1932)
 */
export function fitTrial(
  unknowns: readonly Unknown[],
  residuals: (x: readonly number[]) => readonly number[],
): TrialFit {
  const all = withPriors(unknowns, residuals);
  const scale = unknowns.map((each) => each.scale);
  const least = minimiseConstrained({ residuals: all, start: unknowns.map((each) => each.start), scale });
  if (!least.ok) return { ok: false, reason: "did-not-converge" };
  const covariance = covarianceAt(all, least.x, scale);
  if (covariance === null) return { ok: false, reason: "not-told" };
  const readings = residuals(least.x);
  const scatter = scatterOf(least.sumOfSquares, all(least.x).length - unknowns.length);
  return {
    ok: true,
    estimates: least.x.map((value, j) => ({
      value,
      standardError: scatter.widened * Math.sqrt(covariance[j]?.[j] ?? 0),
    })),
    correlation: (a, b) => (covariance[a]?.[b] ?? 0) / Math.sqrt((covariance[a]?.[a] ?? 1) * (covariance[b]?.[b] ?? 1)),
    residuals: readings,
    scatter,
  };
}

/**
 * Covariance of the unknowns at a point, from the slopes of the residuals.
 *
 * @returns The matrix, or null where a direction is not told.
 */
export function covarianceAt(
  all: (x: readonly number[]) => readonly number[],
  x: readonly number[],
  scale: readonly number[],
): readonly (readonly number[])[] | null {
  const slopes = derivatives(all, x, scale, []);
  if (slopes === null) return null;
  const n = x.length;
  const information = new Float64Array(n * n);
  for (const row of slopes) {
    for (let i = 0; i < n; i++) {
      for (let j = 0; j < n; j++) {
        const product = (row[i] ?? 0) * (scale[i] ?? 1) * (row[j] ?? 0) * (scale[j] ?? 1);
        information[i * n + j] = (information[i * n + j] ?? 0) + product;
      }
    }
  }
  const factor = cholesky(information, n);
  // Written this way round so that NaN fails too.
  if (!(factor.leastShare > TOLD)) return null;
  const inverted = inverse(factor);
  return Array.from({ length: n }, (_, i) =>
    Array.from({ length: n }, (__, j) => (inverted[i * n + j] ?? 0) * (scale[i] ?? 1) * (scale[j] ?? 1)),
  );
}

/**
 * Puts what was known before behind the readings.
 *
 * @returns Residuals of readings and priors together.
 */
export function withPriors(
  unknowns: readonly Unknown[],
  residuals: (x: readonly number[]) => readonly number[],
): (x: readonly number[]) => readonly number[] {
  return (x) => [
    ...residuals(x),
    ...unknowns.flatMap(({ prior }, j) => (prior === undefined ? [] : [((x[j] ?? 0) - prior.value) / prior.sd])),
  ];
}

function scatterOf(chiSquared: number, df: number): Scatter {
  if (df === 0) return { chiSquared, df, p: 1, widened: 1 };
  requireInRange("readings more than unknowns", df, { unit: "", min: 1, max: 10_000 });
  const p = chiSquaredUpperTail({ chiSquared: Math.min(chiSquared, 1e6), df });
  return { chiSquared, df, p, widened: p < RARE ? Math.sqrt(chiSquared / df) : 1 };
}
