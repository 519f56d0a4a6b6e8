import { requireInRange } from "../errors";
import { findRoot } from "../numerics";
import type { PooledUnit } from "./between-units";
import { chiSquaredUpperTail } from "./chi-squared-upper-tail";
import { POOLING_RANGE } from "./partial-pooling";

export const RANDOM_EFFECTS_UNITS_RANGE = { unit: "", min: 2, max: POOLING_RANGE.units.max } as const;

export interface RandomEffects {
  readonly mean: number;
  readonly standardError: number;
  /** Variance between units; 0 where their scatter is no more than their errors explain. */
  readonly betweenVariance: number;
  /** Weighted scatter of the estimates and its probability where the units do not differ. */
  readonly q: number;
  readonly df: number;
  readonly p: number;
}

/**
 * Estimates the mean of like units and the variance between them, as one best value each.
 *
 * By DerSimonian and Laird's moments or by restricted maximum likelihood. Either may put the variance at 0 for few units, and
 * neither says how unsure it is: partialPooling does.
 *
 * @param a.units - Estimate of each unit and its standard error.
 * @param a.method - "dersimonian-laird" or "reml".
 * @returns Mean, its standard error and the variance between units, to about eight digits.
 * @validRange From two units on.
 * @throws {@link OutOfRangeError} when there are too few units, or an estimate or error is outside its range.
 * @source DerSimonian and Laird 1986 (docs/sources.md#dersimonian-laird-1986); Viechtbauer 2005 (docs/sources.md#viechtbauer-2005)
 * @example
 * randomEffects({ units: [{ estimate: 1, standardError: 1 }, { estimate: 5, standardError: 1 }], method: "dersimonian-laird" });
 * // mean 3, betweenVariance 7
 */
export function randomEffects(a: {
  readonly units: readonly PooledUnit[];
  readonly method: "dersimonian-laird" | "reml";
}): RandomEffects {
  requireInRange("number of units", a.units.length, RANDOM_EFFECTS_UNITS_RANGE);
  for (const { estimate, standardError } of a.units) {
    requireInRange("estimate", estimate, POOLING_RANGE.estimate);
    requireInRange("standard error", standardError, POOLING_RANGE.standardError);
  }
  const fixed = weigh(a.units, 0);
  const df = a.units.length - 1;
  const betweenVariance = a.method === "reml" ? restrictedLikelihood(a.units) : moments(fixed, df);
  const random = weigh(a.units, betweenVariance);
  return {
    mean: random.mean,
    standardError: 1 / Math.sqrt(random.sum),
    betweenVariance,
    q: fixed.scatter,
    df,
    p: chiSquaredUpperTail({ chiSquared: Math.min(1e6, fixed.scatter), df }),
  };
}

interface Weighed {
  readonly sum: number;
  /** Σ w − Σ w² / Σ w, added up pair by pair so that one great weight does not drown the others. */
  readonly free: number;
  readonly mean: number;
  readonly scatter: number;
  /** Sum of the squared weights times squared deviations. */
  readonly squaredScatter: number;
}

function weigh(units: readonly PooledUnit[], between: number): Weighed {
  const weights = units.map(({ standardError }) => 1 / (standardError ** 2 + between));
  const total = (f: (unit: PooledUnit, weight: number) => number): number =>
    units.reduce((sum, unit, i) => sum + f(unit, weights[i] ?? 0), 0);
  // Measured from the surest unit, near which the mean lies.
  const origin = units[weights.indexOf(Math.max(...weights))]?.estimate ?? 0;
  const sum = total((_, weight) => weight);
  const mean = origin + total(({ estimate }, weight) => weight * (estimate - origin)) / sum;
  let before = 0;
  const pairs = weights.reduce((all, weight) => {
    const next = all + weight * (before / sum);
    before += weight;
    return next;
  }, 0);
  return {
    sum,
    free: 2 * pairs,
    mean,
    scatter: total(({ estimate }, weight) => weight * (estimate - mean) ** 2),
    squaredScatter: total(({ estimate }, weight) => weight ** 2 * (estimate - mean) ** 2),
  };
}

const moments = ({ free, scatter }: Weighed, df: number): number => Math.max(0, (scatter - df) / free);

// Where the slope of the restricted likelihood is nothing: Σ w² d² = Σ w − Σ w² / Σ w.
function restrictedLikelihood(units: readonly PooledUnit[]): number {
  const slope = (between: number): number => {
    const { sum, free, squaredScatter } = weigh(units, between);
    return (squaredScatter - free) / sum;
  };
  const estimates = units.map(({ estimate }) => estimate);
  const widest = Math.max(...estimates) - Math.min(...estimates);
  // Beyond the whole spread of the estimates the slope always points back.
  if (!(slope(0) > 0)) return 0;
  return findRoot({ f: slope, low: 0, high: 4 * widest ** 2, tolerance: 0 }).x;
}
