import { requireInRange } from "../errors";
import { betweenUnits, type PooledUnit, type Weighted } from "./between-units";
import { mixtureQuantile } from "./mixture-quantile";
import { spreadQuantile } from "./spread-quantile";

export const POOLING_RANGE = {
  /** With two units a flat prior leaves the sd between them without end. */
  units: { unit: "", min: 3, max: 500 },
  standardError: { unit: "", min: 1e-9, max: 1e9 },
  estimate: { unit: "", min: -1e12, max: 1e12 },
} as const;

export interface PooledSpread {
  /** Posterior median of the sd between units, and the interval that holds it with 80 %. */
  readonly betweenSd: number;
  readonly betweenLow80: number;
  readonly betweenHigh80: number;
}

export interface PartialPooling extends PooledSpread {
  /** Posterior mean and sd of the mean of all units there could be. */
  readonly mean: number;
  readonly meanSd: number;
  readonly units: readonly {
    readonly mean: number;
    readonly sd: number;
    readonly median: number;
    readonly low80: number;
    readonly high80: number;
  }[];
}

/**
 * Draws the estimates of like units towards their common mean, each as far as its own error and the spread of all suggest.
 *
 * Normal–normal model with a flat prior on the mean and on the sd between units, integrated numerically; no value of that
 * sd is picked. Intervals are of the mixture itself. The prior on the sd ends at twenty times the widest deviation and error,
 * which only `meanSd` of three or four units feels: without an end it would have none.
 *
 * @param units - Estimate of each unit and its standard error.
 * @returns Posterior of the mean, of the sd between units (its median, because its mean is unbounded for three units) and
 *   of each unit, within 1e-4 of the posterior sd.
 * @validRange From three units on: for one or two the posterior of the sd between units cannot be normalised.
 * @throws {@link OutOfRangeError} when there are fewer than three units, or an estimate or error is outside its range.
 * @source Gelman and others 2013, sections 5.4 and 5.5 (docs/sources.md#gelman-2013)
 * @example
 * partialPooling([{ estimate: 28, standardError: 15 }, { estimate: 8, standardError: 10 }, { estimate: -3, standardError: 16 }]);
 */
export function partialPooling(units: readonly PooledUnit[]): PartialPooling {
  requireUnits(units);
  const nodes = betweenUnits(units);
  const mean = momentsOf(nodes.map(({ weight, mean: centre, variance }) => ({ weight, centre, variance })));
  return {
    mean: mean.mean,
    meanSd: mean.sd,
    ...spreadOf(nodes),
    units: units.map((unit) => pooled(unit, nodes)),
  };
}

/**
 * Finds the sd between like units as partialPooling does, without drawing any of them towards the others.
 *
 * @param units - Estimate of each unit and its standard error.
 * @returns Posterior median of the sd between units and its 80 % interval.
 * @validRange As partialPooling.
 * @throws {@link OutOfRangeError} as partialPooling does.
 * @source Gelman and others 2013, section 5.4 (docs/sources.md#gelman-2013)
 */
export function pooledSpread(units: readonly PooledUnit[]): PooledSpread {
  requireUnits(units);
  return spreadOf(betweenUnits(units));
}

function requireUnits(units: readonly PooledUnit[]): void {
  requireInRange("number of units", units.length, POOLING_RANGE.units);
  for (const { estimate, standardError } of units) {
    requireInRange("estimate", estimate, POOLING_RANGE.estimate);
    requireInRange("standard error", standardError, POOLING_RANGE.standardError);
  }
}

function spreadOf(nodes: readonly Weighted[]): PooledSpread {
  const spread = (probability: number): number => spreadQuantile(nodes, probability);
  return { betweenSd: spread(0.5), betweenLow80: spread(0.1), betweenHigh80: spread(0.9) };
}

function pooled({ estimate, standardError }: PooledUnit, nodes: readonly Weighted[]): PartialPooling["units"][number] {
  const parts = nodes.map(({ weight, between, mean, variance }) => {
    // Share of its own deviation that a unit keeps, for this sd between units.
    const kept = between ** 2 / (standardError ** 2 + between ** 2);
    return {
      weight,
      centre: mean + kept * (estimate - mean),
      variance: kept * standardError ** 2 + (1 - kept) ** 2 * variance,
    };
  });
  return {
    ...momentsOf(parts),
    median: mixtureQuantile(parts, 0.5),
    low80: mixtureQuantile(parts, 0.1),
    high80: mixtureQuantile(parts, 0.9),
  };
}

function momentsOf(parts: readonly { readonly weight: number; readonly centre: number; readonly variance: number }[]): {
  readonly mean: number;
  readonly sd: number;
} {
  const mean = parts.reduce((sum, { weight, centre }) => sum + weight * centre, 0);
  const variance = parts.reduce(
    (sum, { weight, centre, variance: own }) => sum + weight * (own + (centre - mean) ** 2),
    0,
  );
  return { mean, sd: Math.sqrt(variance) };
}
