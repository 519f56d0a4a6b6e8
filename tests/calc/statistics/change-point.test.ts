import { describe, expect, it } from "vitest";
import { changePoint, type ChangePoint, type PooledUnit } from "@/lib/calc/statistics";
import { expectWithin } from "../../support/expect-within";
import { seededNoise } from "../../support/seeded-noise";

/** Two-sided points of the largest of so many normal deviates with correlation ½, one variance known. */
const DUNNETT = [
  { values: 2, p: 0.05, printed: 1.96 },
  { values: 3, p: 0.05, printed: 2.21 },
  { values: 3, p: 0.01, printed: 2.79 },
] as const;

function found(values: readonly PooledUnit[]): ChangePoint {
  const outcome = changePoint(values);
  if (!outcome.ok) throw new Error(outcome.reason);
  return outcome;
}

const sure = (estimates: readonly number[]): PooledUnit[] =>
  estimates.map((estimate) => ({ estimate, standardError: 1 }));

/** Values whose clearest change has a given statistic: all of it behind the first place. */
function withStatistic(count: number, statistic: number): PooledUnit[] {
  const step = statistic * Math.sqrt(1 + 1 / (count - 1));
  return sure(Array.from({ length: count }, (_, i) => (i === 0 ? 0 : step)));
}

/** The largest difference of weighted means over its error, place by place. */
function clearest(estimates: readonly number[], errors: readonly number[]): number {
  const meanOf = (from: number, to: number): { mean: number; weight: number } => {
    let weight = 0;
    let sum = 0;
    for (let i = from; i < to; i++) {
      const own = (errors[i] ?? 1) ** -2;
      weight += own;
      sum += own * (estimates[i] ?? 0);
    }
    return { mean: sum / weight, weight };
  };
  const places = Array.from({ length: errors.length - 1 }, (_, i) => {
    const [before, behind] = [meanOf(0, i + 1), meanOf(i + 1, errors.length)];
    return Math.abs(behind.mean - before.mean) / Math.sqrt(1 / before.weight + 1 / behind.weight);
  });
  return Math.max(...places);
}

describe("changePoint", () => {
  // The differences at the two places of three values have correlation √(1·1 / (2·2)) = ½.
  it.each(DUNNETT)(
    "$values values reach $printed with a probability of $p (Dunnett 1964)",
    ({ values, p, printed }) => {
      const above = found(withStatistic(values, printed - 0.005)).p;
      const below = found(withStatistic(values, printed + 0.005)).p;
      expect(above).toBeGreaterThan(p - 1e-4);
      expect(below).toBeLessThan(p + 1e-4);
    },
  );

  it("is as probable as simulated sequences say, with unequal errors (second method)", () => {
    const errors = [1, 0.4, 2, 1, 0.7, 1.5, 0.3, 1];
    const normal = seededNoise(20261128);
    const draws = Array.from({ length: 20_000 }, () =>
      clearest(
        errors.map((error) => error * normal()),
        errors,
      ),
    );
    for (const seed of [5, 6, 7]) {
      const noise = seededNoise(seed);
      const estimates = errors.map((error, i) => error * noise() + (i < 4 ? 0 : 0.4));
      const { p, statistic } = found(estimates.map((estimate, i) => ({ estimate, standardError: errors[i] ?? 1 })));
      expect(statistic).toBeCloseTo(clearest(estimates, errors), 9);
      const share = draws.filter((each) => each > statistic).length / draws.length;
      // Three binomial errors.
      expectWithin(share, p, 3 * Math.sqrt((p * (1 - p)) / draws.length));
    }
  });

  it("names the place, both means and the error of their difference", () => {
    const change = found(sure([2, 2, 2, 8, 8]));
    expect(change).toMatchObject({ after: 3, before: 2, behind: 8 });
    // 1/3 + 1/2 of a variance of 1.
    expect(change.differenceSd).toBeCloseTo(Math.sqrt(5 / 6), 12);
    expect(change.statistic).toBeCloseTo(6 / Math.sqrt(5 / 6), 12);
  });

  it("finds a step that is the same whichever way the sequence is read", () => {
    const values = sure([0.3, -1, 0.4, 1.9, 2.2, 1.1, 2.5]);
    expect(found(values.toReversed()).p).toBeCloseTo(found(values).p, 6);
  });

  it("refuses a single value", () => {
    expect(() => changePoint(sure([1]))).toThrow("number of values 1 is outside 2 to 400");
  });
});
