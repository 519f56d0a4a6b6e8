import { requireInRange } from "../errors";
import { seededRandom } from "../judging/seeded-random";
import type { PooledUnit } from "./between-units";
import { CHANGE_POINT_RANGE } from "./change-point";
import { POOLING_RANGE } from "./partial-pooling";

export const SEQUENCES_RANGE = { unit: "", min: 1, max: 40 } as const;

/** So few places have all their orders tried: 7! is 5040. */
const ALL_ORDERS = 7;
/** Of more, so many are drawn: with the order that was, 2000, and 0.05 is known to 0.005. */
const DRAWN = 1999;
const SEED = 1977;
/** Statistics of one set of values in two orders differ by rounding alone. */
const LEVEL = 1e-9;
/** What has next to no weight has no mean. */
const LEAST_SHARE = 1e-9;

/**
 * Tells how probable it is that a step as clear as the clearest of each sequence shows in any of them when the order says nothing.
 *
 * A permutation test: if nothing changed, every order of the occasions was as probable as the one that was. All orders are tried,
 * or 2000 of them, and in each the clearest step of all sequences is taken, so that the probability holds for all sequences and
 * all places together, whatever the errors are: a wrong reading stands at every place alike, where a test by stated errors takes
 * it for a change. With four occasions no order is rarer than one in twelve, with five one in sixty.
 *
 * @param sequences - Of each figure a value for each occasion, in their order; null where an occasion tells nothing of it.
 * @returns For each sequence the probability, adjusted for all of them; 1 where it has fewer than two values.
 * @validRange Up to 40 sequences of 2 to 400 occasions.
 * @throws {@link OutOfRangeError} when there are too many or too few, they differ in length, or a value is outside its range.
 * @source Antoch and Hušková 2001; Westfall and Young 1993 (docs/sources.md#antoch-huskova-2001,
 * docs/sources.md#westfall-young-1993)
 * @example
 * const brews = [0, 0, 0, 1, 1, 1].map((estimate) => ({ estimate, standardError: 1 }));
 * changesByOrder([brews]); // [0.1]: 2 of the 20 arrangements
 */
export function changesByOrder(sequences: readonly (readonly (PooledUnit | null)[])[]): number[] {
  requireInRange("number of sequences", sequences.length, SEQUENCES_RANGE);
  const occasions = sequences[0]?.length ?? 0;
  requireInRange("number of values", occasions, CHANGE_POINT_RANGE);
  for (const sequence of sequences) {
    requireInRange("number of values", sequence.length, { unit: "", min: occasions, max: occasions });
  }
  const weighed = sequences.map(weighedSequence);
  const asItWas = Array.from({ length: occasions }, (_, i) => i);
  const observed = weighed.map((sequence) => clearestStep(sequence, asItWas));
  const reached = observed.map(() => 0);
  let orders = 0;
  for (const order of ordersOf(occasions)) {
    orders++;
    const clearest = Math.max(...weighed.map((sequence) => clearestStep(sequence, order)));
    observed.forEach((statistic, k) => {
      if (clearest >= statistic - LEVEL) reached[k] = (reached[k] ?? 0) + 1;
    });
  }
  return reached.map((count) => count / orders);
}

interface Weighed {
  readonly weights: Float64Array;
  /** Weight times distance from the weighted mean, which no order changes. */
  readonly moments: Float64Array;
  readonly total: number;
}

function weighedSequence(sequence: readonly (PooledUnit | null)[]): Weighed {
  for (const value of sequence) {
    if (value === null) continue;
    requireInRange("estimate", value.estimate, POOLING_RANGE.estimate);
    requireInRange("standard error", value.standardError, POOLING_RANGE.standardError);
  }
  const weights = Float64Array.from(sequence, (value) => (value === null ? 0 : value.standardError ** -2));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const mean = sequence.reduce((sum, value, i) => sum + (weights[i] ?? 0) * (value?.estimate ?? 0), 0) / total;
  const moments = Float64Array.from(sequence, (value, i) =>
    value === null ? 0 : (weights[i] ?? 0) * (value.estimate - mean),
  );
  return { weights, moments, total };
}

/** The largest difference of means before and after a place, over its standard error; 0 where there is no place. */
function clearestStep({ weights, moments, total }: Weighed, order: readonly number[]): number {
  let weight = 0;
  let moment = 0;
  let most = 0;
  for (let at = 0; at < order.length - 1; at++) {
    const i = order[at] ?? 0;
    weight += weights[i] ?? 0;
    moment += moments[i] ?? 0;
    const share = weight / total;
    if (!(share > LEAST_SHARE && share < 1 - LEAST_SHARE)) continue;
    most = Math.max(most, Math.abs(moment) / Math.sqrt(weight * (1 - share)));
  }
  return most;
}

/** All orders where they are few; otherwise the one that was and many by chance, always the same ones. */
function* ordersOf(count: number): Generator<readonly number[]> {
  const order = Array.from({ length: count }, (_, i) => i);
  if (count <= ALL_ORDERS) {
    yield* arrangements(order, count);
    return;
  }
  yield order;
  const random = seededRandom(SEED);
  for (let draw = 0; draw < DRAWN; draw++) {
    for (let last = count - 1; last > 0; last--) swap(order, last, Math.floor(random.uniform() * (last + 1)));
    yield order;
  }
}

/** Every order of the first so many, each once (Heap). */
function* arrangements(order: number[], count: number): Generator<readonly number[]> {
  if (count <= 1) {
    yield order;
    return;
  }
  for (let i = 0; i < count; i++) {
    yield* arrangements(order, count - 1);
    if (i < count - 1) swap(order, count % 2 === 0 ? i : 0, count - 1);
  }
}

function swap(order: number[], one: number, other: number): void {
  const kept = order[one] ?? 0;
  order[one] = order[other] ?? 0;
  order[other] = kept;
}
