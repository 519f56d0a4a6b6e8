import { requireInRange } from "../errors";
import { ASSESSORS_RANGE, requireCount, type ForcedChoice } from "./forced-choice";
import { seededRandom, SEED_RANGE } from "./seeded-random";
import { shuffle } from "./shuffle";

/** The three glasses of one assessor, each of the first beer or the second. */
export type GlassOrder = readonly [0 | 1, 0 | 1, 0 | 1];

/** Every way to pour two alike and one odd; of a duo-trio, in which the first is the reference, every way to match it. */
const ORDERS: Readonly<Record<ForcedChoice, readonly GlassOrder[]>> = {
  triangle: [
    [0, 0, 1],
    [0, 1, 0],
    [1, 0, 0],
    [1, 1, 0],
    [1, 0, 1],
    [0, 1, 1],
  ],
  "duo-trio": [
    [0, 0, 1],
    [0, 1, 0],
    [1, 1, 0],
    [1, 0, 1],
  ],
};

/**
 * Deals out the orders of the glasses of a triangle or duo-trio test.
 *
 * All six orders of a triangle, or four of a duo-trio with either beer as the reference, are used equally often; what is
 * left over when the number of assessors is no multiple is drawn, and who gets which order too.
 *
 * @param a.test - Triangle, or duo-trio whose first glass is the reference.
 * @param a.assessors - Number of assessors.
 * @param a.seed - Chooses who gets which order; it is a secret until the answers are in.
 * @returns For each assessor the beer of each glass, 0 or 1.
 * @validRange 1 to 10 000 assessors.
 * @throws {@link OutOfRangeError} when a number is outside its range or not whole.
 * @source ISO 4120:2021 and ISO 10399:2017, presentation of the samples (docs/sources.md#iso-4120-2021, docs/sources.md#iso-10399-2017)
 * @example
 * differenceOrders({ test: "triangle", assessors: 6, seed: 1 }); // each of the six orders once
 */
export function differenceOrders(a: {
  readonly test: ForcedChoice;
  readonly assessors: number;
  readonly seed: number;
}): readonly GlassOrder[] {
  const assessors = requireCount("number of assessors", a.assessors, ASSESSORS_RANGE);
  const random = seededRandom(requireInRange("seed", a.seed, SEED_RANGE));
  const orders = ORDERS[a.test];
  const dealt: GlassOrder[] = [];
  while (dealt.length < assessors) dealt.push(...shuffle(orders, random));
  return shuffle(dealt.slice(0, assessors), random);
}
