import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cheapestPacks, type Pack, type PackPurchase } from "@/lib/calc/order";
import { OutOfRangeError } from "@/lib/calc/errors";

/** Worked by hand in docs/worked-examples.md#packs. */
const ROWS: readonly {
  readonly what: string;
  readonly needed: number;
  readonly packs: readonly (readonly [size: number, price: number])[];
  readonly counts: readonly number[];
  readonly cost: number;
  readonly leftOver: number;
}[] = [
  {
    what: "a sack and two bags beat two sacks",
    needed: 32,
    packs: [
      [25, 3000],
      [5, 800],
    ],
    counts: [1, 2],
    cost: 4600,
    leftOver: 3,
  },
  {
    what: "one sack beats five bags that would be nearer",
    needed: 21,
    packs: [
      [25, 3000],
      [5, 800],
    ],
    counts: [1, 0],
    cost: 3000,
    leftOver: 4,
  },
  {
    what: "the best price for its amount is not bought",
    needed: 10,
    packs: [
      [25, 3000],
      [10, 1500],
    ],
    counts: [0, 1],
    cost: 1500,
    leftOver: 0,
  },
  {
    what: "the second best twice beats the best and a rest",
    needed: 24,
    packs: [
      [15, 1000],
      [12, 900],
      [1, 400],
    ],
    counts: [0, 2, 0],
    cost: 1800,
    leftOver: 0,
  },
  {
    what: "of equally dear ones the least left over",
    needed: 9,
    packs: [
      [10, 1000],
      [9, 1000],
    ],
    counts: [0, 1],
    cost: 1000,
    leftOver: 0,
  },
  {
    what: "then the fewest packs",
    needed: 10,
    packs: [
      [5, 500],
      [10, 1000],
    ],
    counts: [0, 1],
    cost: 1000,
    leftOver: 0,
  },
  { what: "nothing is needed", needed: 0, packs: [[25, 3000]], counts: [0], cost: 0, leftOver: 0 },
  {
    what: "a gift is taken",
    needed: 7,
    packs: [
      [3, 0],
      [7, 500],
    ],
    counts: [3, 0],
    cost: 0,
    leftOver: 2,
  },
  {
    what: "a bulk price makes more cheaper than enough",
    needed: 18,
    packs: [
      [10, 1000],
      [20, 1500],
      [1, 120],
    ],
    counts: [0, 1, 0],
    cost: 1500,
    leftOver: 2,
  },
];

const packsOf = (pairs: readonly (readonly [number, number])[]): readonly Pack[] =>
  pairs.map(([size, price]) => ({ size, price }));

/** Every choice of packs that could be cheapest, one by one: no pack more often than it takes to cover alone. */
function enumerated(needed: number, packs: readonly Pack[]): Omit<PackPurchase, "counts"> & { readonly packs: number } {
  let best = { cost: Infinity, leftOver: Infinity, packs: Infinity, amount: 0 };
  const look = (place: number, amount: number, cost: number, count: number): void => {
    const pack = packs[place];
    if (pack === undefined) {
      const leftOver = amount - needed;
      const nearer = cost - best.cost || leftOver - best.leftOver || count - best.packs;
      if (leftOver >= 0 && nearer < 0) best = { cost, leftOver, packs: count, amount };
      return;
    }
    for (let many = 0; many <= Math.ceil(needed / pack.size); many++) {
      look(place + 1, amount + many * pack.size, cost + many * pack.price, count + many);
    }
  };
  look(0, 0, 0, 0);
  return best;
}

const somePack = fc.record({ size: fc.integer({ min: 1, max: 30 }), price: fc.integer({ min: 0, max: 60 }) });
const someOrder = fc.record({
  needed: fc.integer({ min: 0, max: 60 }),
  packs: fc.array(somePack, { minLength: 1, maxLength: 3 }),
});

describe("cheapestPacks", () => {
  it.each(ROWS)("$what (by hand)", ({ needed, packs, counts, cost, leftOver }) => {
    expect(cheapestPacks({ needed, packs: packsOf(packs) })).toMatchObject({ counts, cost, leftOver });
  });

  it("finds what looking at every choice finds, ties included", () => {
    fc.assert(
      fc.property(someOrder, ({ needed, packs }) => {
        const { counts, ...found } = cheapestPacks({ needed, packs });
        const all = counts.reduce((sum, count) => sum + count, 0);
        expect({ ...found, packs: all }).toEqual(enumerated(needed, packs));
      }),
      { numRuns: 3000 },
    );
  });

  it("says what its counts come to", () => {
    fc.assert(
      fc.property(someOrder, ({ needed, packs }) => {
        const { counts, cost, amount, leftOver } = cheapestPacks({ needed, packs });
        const sum = (of: keyof Pack): number => packs.reduce((all, pack, i) => all + pack[of] * (counts[i] ?? NaN), 0);
        expect({ cost, amount, leftOver }).toEqual({
          cost: sum("price"),
          amount: sum("size"),
          leftOver: sum("size") - needed,
        });
        expect(leftOver).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  it("asks no more for the same in smaller units: grams for kilograms", () => {
    fc.assert(
      fc.property(someOrder, fc.constantFrom(10, 1000), ({ needed, packs }, factor) => {
        const inGrams = packs.map(({ size, price }) => ({ size: size * factor, price }));
        expect(cheapestPacks({ needed: needed * factor, packs: inGrams }).counts).toEqual(
          cheapestPacks({ needed, packs }).counts,
        );
      }),
    );
  });

  it("never asks less for more", () => {
    fc.assert(
      fc.property(someOrder, fc.nat(20), ({ needed, packs }, more) => {
        const dearer = cheapestPacks({ needed: needed + more, packs }).cost;
        expect(dearer).toBeGreaterThanOrEqual(cheapestPacks({ needed, packs }).cost);
      }),
    );
  });

  it("solves tonnes in sizes without a common measure", () => {
    // 55, 25 and 1 pounds in grams, hardly dearer than each other.
    const packs = packsOf([
      [24_947, 3000],
      [11_340, 1380],
      [453, 57],
    ]);
    const { leftOver, cost } = cheapestPacks({ needed: 4_999_999, packs });
    expect(leftOver).toBeGreaterThanOrEqual(0);
    // Between the price of exactly so much at the best rate and rounding up to best packs alone.
    expect(cost).toBeGreaterThanOrEqual((4_999_999 / 24_947) * 3000);
    expect(cost).toBeLessThanOrEqual(Math.ceil(4_999_999 / 24_947) * 3000);
  });

  it.each([
    ["half a gram", { needed: 0.5, packs: packsOf([[1, 1]]) }],
    ["less than nothing", { needed: -1, packs: packsOf([[1, 1]]) }],
    ["without an offer", { needed: 1, packs: [] }],
    ["a pack of nothing", { needed: 1, packs: packsOf([[0, 1]]) }],
    ["a price below nothing", { needed: 1, packs: packsOf([[1, -1]]) }],
    ["a price that is no number", { needed: 1, packs: packsOf([[1, NaN]]) }],
  ])("refuses %s", (_, order) => {
    expect(() => cheapestPacks(order)).toThrow(OutOfRangeError);
  });
});
