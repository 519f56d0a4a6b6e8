import { requireInRange } from "../errors";
import type { PooledUnit } from "./between-units";
import { normalCdf } from "./normal-cdf";
import { POOLING_RANGE } from "./partial-pooling";

export const CHANGE_POINT_RANGE = { unit: "", min: 2, max: 400 } as const;

export interface ChangePoint {
  /** How many values stand before the likeliest change. */
  readonly after: number;
  /** Weighted means before and after it. */
  readonly before: number;
  readonly behind: number;
  readonly differenceSd: number;
  /** Largest difference over its standard error, of all places where a change might be. */
  readonly statistic: number;
  /** How probable one as large is at any place when nothing changes. */
  readonly p: number;
}

export type ChangePointOutcome =
  ({ readonly ok: true } & ChangePoint) | { readonly ok: false; readonly reason: "one-value-has-all-weight" };

/** Places whose differences are nearly the same number count as one: share of the variance that is new. */
const NEW = 0.01;
/** Quadrature points to the narrowest step, and how far a step reaches, in standard deviations. */
const POINTS = 4;
const REACH = 7;
/** Beyond this a normal deviate is not seen once in all digits of a number. */
const FARTHEST = 8.2;
/** What has next to no weight has no mean. */
const LEAST_SHARE = 1e-9;

/**
 * Looks for the place in a sequence where its mean changes, and tells how probable so clear a one is by chance.
 *
 * The likelihood-ratio test: of all places the one with the largest difference of means before and after, over its standard
 * error. The differences at neighbouring places are correlated and form a Markov chain, so the probability of the largest is
 * found exactly, by one integral after the other; values need not be equally sure.
 *
 * @param values - Independent estimates in their order, with standard errors that are known.
 * @returns The likeliest place, both means, and the probability, within 1e-4; or that one value has all the weight.
 * @validRange 2 to 400 values.
 * @throws {@link OutOfRangeError} when there are too few or too many values, or one is outside its range.
 * @source Hawkins 1977 (docs/sources.md#hawkins-1977)
 * @example
 * changePoint([{ estimate: 0, standardError: 1 }, { estimate: 2.8, standardError: 1 }]); // { ok: true, statistic: 1.98, p: 0.048, … }
 */
export function changePoint(values: readonly PooledUnit[]): ChangePointOutcome {
  requireInRange("number of values", values.length, CHANGE_POINT_RANGE);
  for (const { estimate, standardError } of values) {
    requireInRange("estimate", estimate, POOLING_RANGE.estimate);
    requireInRange("standard error", standardError, POOLING_RANGE.standardError);
  }
  const splits = splitsOf(values);
  // Where one value has all the weight, there is nothing to set beside it.
  if (splits === null) return { ok: false, reason: "one-value-has-all-weight" };
  const largest = splits.reduce((most, split) => (Math.abs(split.t) > Math.abs(most.t) ? split : most));
  const statistic = Math.abs(largest.t);
  const shares = splits.map(({ share }) => share);
  return {
    ok: true,
    after: largest.after,
    before: largest.before,
    behind: largest.behind,
    differenceSd: largest.sd,
    statistic,
    p: Math.min(1, Math.max(0, 1 - allWithin(shares, statistic))),
  };
}

interface Split {
  readonly after: number;
  /** Share of all weight before the split. */
  readonly share: number;
  readonly before: number;
  readonly behind: number;
  readonly sd: number;
  readonly t: number;
}

function splitsOf(values: readonly PooledUnit[]): readonly [Split, ...Split[]] | null {
  const weights = values.map(({ standardError }) => standardError ** -2);
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const mean = values.reduce((sum, { estimate }, i) => sum + (weights[i] ?? 0) * estimate, 0) / total;
  const splits: Split[] = [];
  let weight = 0;
  let moment = 0;
  values.slice(0, -1).forEach(({ estimate }, i) => {
    weight += weights[i] ?? 0;
    moment += (weights[i] ?? 0) * (estimate - mean);
    const share = weight / total;
    const last = splits.at(-1)?.share;
    const isNew = last === undefined || 1 - (last * (1 - share)) / (share * (1 - last)) >= NEW;
    if (!isNew || share < LEAST_SHARE || share > 1 - LEAST_SHARE) return;
    const before = mean + moment / weight;
    const behind = mean - moment / (total - weight);
    const sd = Math.sqrt(1 / weight + 1 / (total - weight));
    splits.push({ after: i + 1, share, before, behind, sd, t: (behind - before) / sd });
  });
  const [first, ...others] = splits;
  return first === undefined ? null : [first, ...others];
}

/** Probability that the differences at all places stay within ±limit. */
function allWithin(shares: readonly number[], limit: number): number {
  if (limit === 0) return 0;
  if (limit > FARTHEST) return 1;
  const correlations = shares.slice(1).map((share, i) => {
    const before = shares[i] ?? 0;
    return Math.sqrt((before * (1 - share)) / (share * (1 - before)));
  });
  if (correlations.length === 0) return normalCdf(limit) - normalCdf(-limit);
  const narrowest = Math.min(...correlations.map((r) => Math.sqrt(1 - r * r)));
  const count = 2 * Math.ceil(Math.max(8, (limit * POINTS) / narrowest));
  const step = (2 * limit) / count;
  const points = Array.from({ length: count + 1 }, (_, i) => -limit + i * step);
  let curve = points.map(density);
  for (const r of correlations.slice(0, -1)) curve = points.map((y) => carried(points, curve, r, y, step));
  const last = correlations.at(-1) ?? 0;
  const sd = Math.sqrt(1 - last * last);
  const inside = points.map((x, i) => {
    const stays = normalCdf((limit - last * x) / sd) - normalCdf((-limit - last * x) / sd);
    return (curve[i] ?? 0) * stays;
  });
  return simpson(inside, 0, count, step);
}

/** Density at y after one more step, from all points within reach. */
function carried(points: readonly number[], curve: readonly number[], r: number, y: number, step: number): number {
  const sd = Math.sqrt(1 - r * r);
  let sum = 0;
  const last = points.length - 1;
  for (let i = 0; i <= last; i++) {
    const away = (y - r * (points[i] ?? 0)) / sd;
    if (Math.abs(away) > REACH) continue;
    sum += simpsonWeight(i, last) * (curve[i] ?? 0) * density(away);
  }
  return (sum * step) / (3 * sd);
}

function simpson(values: readonly number[], from: number, to: number, step: number): number {
  let sum = 0;
  for (let i = from; i <= to; i++) sum += simpsonWeight(i, to) * (values[i] ?? 0);
  return (sum * step) / 3;
}

const simpsonWeight = (i: number, last: number): number => (i === 0 || i === last ? 1 : i % 2 === 1 ? 4 : 2);

const density = (x: number): number => Math.exp(-(x ** 2) / 2) / Math.sqrt(2 * Math.PI);
