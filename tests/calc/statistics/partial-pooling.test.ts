import { describe, expect, it } from "vitest";
import { normalCdf, partialPooling, type PooledUnit } from "@/lib/calc/statistics";
import { pooledSpread } from "@/lib/calc/statistics/partial-pooling";
import { EIGHT_SCHOOLS, EIGHT_SCHOOLS_MEDIANS } from "../../reference/eight-schools";
import { expectWithin } from "../../support/expect-within";

/**
 * A second method: the joint posterior of mean and spread on a plain grid of both, with the likelihood of each estimate as
 * it stands and no closed form but that of one unit.
 */
function bruteForce(units: readonly PooledUnit[], step: number, from: number, to: number, widest: number): Brute {
  let total = 0;
  let mean = 0;
  let square = 0;
  const shrunk = units.map(() => ({ mean: 0, square: 0 }));
  const below = units.map(() => 0);
  const limits = units.map((_, i) => partialPooling(units).units[i]?.low80 ?? NaN);
  for (let tau = step / 2; tau < widest; tau += step) {
    for (let mu = from; mu <= to; mu += step) {
      let log = 0;
      for (const { estimate, standardError } of units) {
        const variance = standardError ** 2 + tau ** 2;
        log -= Math.log(variance) / 2 + (estimate - mu) ** 2 / (2 * variance);
      }
      const weight = Math.exp(log);
      total += weight;
      mean += weight * mu;
      square += weight * mu * mu;
      units.forEach(({ estimate, standardError }, i) => {
        const precision = standardError ** -2 + tau ** -2;
        const centre = (estimate * standardError ** -2 + mu * tau ** -2) / precision;
        const unit = shrunk[i];
        if (unit === undefined) return;
        unit.mean += weight * centre;
        unit.square += weight * (centre * centre + 1 / precision);
        below[i] = (below[i] ?? 0) + weight * normalCdf(((limits[i] ?? NaN) - centre) * Math.sqrt(precision));
      });
    }
  }
  const sd = (sum: number, squares: number): number => Math.sqrt(squares / total - (sum / total) ** 2);
  return {
    mean: mean / total,
    meanSd: sd(mean, square),
    units: shrunk.map((unit) => ({ mean: unit.mean / total, sd: sd(unit.mean, unit.square) })),
    below: below.map((weight) => weight / total),
  };
}

interface Brute {
  readonly mean: number;
  readonly meanSd: number;
  readonly units: readonly { readonly mean: number; readonly sd: number }[];
  /** Probability below the lower 80 % limit. */
  readonly below: readonly number[];
}

describe("pooledSpread", () => {
  it("is the spread of the whole pooling, with the same refusals", () => {
    const { betweenSd, betweenLow80, betweenHigh80 } = partialPooling(EIGHT_SCHOOLS);
    expect(pooledSpread(EIGHT_SCHOOLS)).toEqual({ betweenSd, betweenLow80, betweenHigh80 });
    expect(() => pooledSpread(EIGHT_SCHOOLS.slice(0, 2))).toThrow("number of units 2 is outside 3 to 500");
    expect(() => pooledSpread(EIGHT_SCHOOLS.map((unit) => ({ ...unit, standardError: 0 })))).toThrow(
      "standard error 0",
    );
  });
});

describe("partialPooling", () => {
  it("comes to the printed medians of eight schools (BDA3, table 5.3)", () => {
    // A median of 200 draws of a posterior with an sd of 6 to 8 errs by 0.5 to 0.7; printed to whole numbers. Three errors.
    partialPooling(EIGHT_SCHOOLS).units.forEach(({ median }, i) =>
      expectWithin(median, EIGHT_SCHOOLS_MEDIANS[i] ?? NaN, 2),
    );
  });

  it("agrees with a plain grid of mean and spread (a second method)", () => {
    const pooled = partialPooling(EIGHT_SCHOOLS);
    const brute = bruteForce(EIGHT_SCHOOLS, 0.5, -60, 76, 120);
    expectWithin(pooled.mean, brute.mean, 0.01);
    expectWithin(pooled.meanSd, brute.meanSd, 0.01);
    pooled.units.forEach(({ mean, sd }, i) => {
      expectWithin(mean, brute.units[i]?.mean ?? NaN, 0.01);
      expectWithin(sd, brute.units[i]?.sd ?? NaN, 0.01);
      expectWithin(brute.below[i] ?? NaN, 0.1, 0.001);
    });
  });

  it("puts 10 % below each lower and above each upper limit: mirrored data mirror the answer", () => {
    const pooled = partialPooling(EIGHT_SCHOOLS);
    const mirrored = partialPooling(EIGHT_SCHOOLS.map((unit) => ({ ...unit, estimate: -unit.estimate })));
    expectWithin(mirrored.mean, -pooled.mean, 1e-9);
    expectWithin(mirrored.betweenSd, pooled.betweenSd, 1e-9);
    pooled.units.forEach((unit, i) => {
      expectWithin(mirrored.units[i]?.low80 ?? NaN, -unit.high80, 1e-6);
      expectWithin(mirrored.units[i]?.high80 ?? NaN, -unit.low80, 1e-6);
      expectWithin(mirrored.units[i]?.median ?? NaN, -unit.median, 1e-6);
    });
  });

  it("finds the spread of three equal estimates with error 1: a closed form", () => {
    // √(1 + τ²) for the mean times (1 + τ²)^(−3/2) for the units makes 1/(1 + τ²) of the spread τ: the share below τ is
    // 2/π atan τ, apart from the end of the prior at 20, beyond which lie 3.2 %.
    const pooled = partialPooling([1, 1, 1].map((estimate) => ({ estimate, standardError: 1 })));
    const quantile = (p: number): number => Math.tan(p * Math.atan(20));
    expectWithin(pooled.betweenSd, quantile(0.5), 1e-4);
    expectWithin(pooled.betweenLow80, quantile(0.1), 1e-4);
    expectWithin(pooled.betweenHigh80, quantile(0.9), 0.01);
    expectWithin(pooled.mean, 1, 1e-12);
    // The variance of the mean is (1 + τ²)/3, whose mean over that posterior is 20/(3 atan 20).
    expectWithin(pooled.meanSd, Math.sqrt(20 / (3 * Math.atan(20))), 2e-3);
  });

  it("leaves units alone that lie far apart, and joins units that agree", () => {
    const apart = partialPooling([0, 1000, 2000, 4000].map((estimate) => ({ estimate, standardError: 1 })));
    apart.units.forEach(({ mean, sd }, i) => {
      expectWithin(mean, [0, 1000, 2000, 4000][i] ?? NaN, 0.01);
      expectWithin(sd, 1, 1e-3);
    });
    const agreed = partialPooling(
      Array.from({ length: 100 }, (_, i) => ({ estimate: 5 + 0.1 * (i % 2), standardError: 10 })),
    );
    agreed.units.forEach(({ mean }) => expectWithin(mean, 5.05, 0.01));
    // The mean of a hundred estimates of error 10, and hardly any spread to widen it.
    expectWithin(agreed.meanSd, 1, 0.05);
  });

  it("moves and stretches with its data, and never leaves the range of the estimates", () => {
    const pooled = partialPooling(EIGHT_SCHOOLS);
    const moved = partialPooling(
      EIGHT_SCHOOLS.map((unit) => ({ estimate: 1000 + 3 * unit.estimate, standardError: 3 * unit.standardError })),
    );
    expectWithin(moved.mean, 1000 + 3 * pooled.mean, 1e-8);
    expectWithin(moved.betweenSd, 3 * pooled.betweenSd, 1e-8);
    expectWithin(moved.betweenHigh80, 3 * pooled.betweenHigh80, 1e-8);
    moved.units.forEach(({ mean, sd }, i) => {
      expectWithin(mean, 1000 + 3 * (pooled.units[i]?.mean ?? NaN), 1e-8);
      expectWithin(sd, 3 * (pooled.units[i]?.sd ?? NaN), 1e-8);
    });
    pooled.units.forEach(({ mean, low80, median, high80 }) => {
      expect(mean > -3 && mean < 28).toBe(true);
      expect(low80 < median && median < high80).toBe(true);
    });
  });

  it("refuses two units, an error of nothing and what is not a number", () => {
    const unit = { estimate: 1, standardError: 1 };
    expect(() => partialPooling([unit, unit])).toThrow("number of units 2 is outside 3 to 500");
    expect(() => partialPooling([])).toThrow("number of units 0 is outside 3 to 500");
    expect(() => partialPooling([unit, unit, { estimate: 1, standardError: 0 }])).toThrow(
      "standard error 0 is outside 1e-9 to 1000000000",
    );
    expect(() => partialPooling([unit, unit, { estimate: NaN, standardError: 1 }])).toThrow("estimate NaN is outside");
  });
});
