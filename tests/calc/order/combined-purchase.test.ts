import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { OutOfRangeError } from "@/lib/calc/errors";
import { cheapestPacks, combinedPurchase } from "@/lib/calc/order";

const SACK_AND_BAGS = [
  { size: 25_000, price: 3000 },
  { size: 5000, price: 800 },
];

const someClub = fc.record({
  needs: fc.array(fc.nat(40), { minLength: 1, maxLength: 12 }),
  packs: fc.array(fc.record({ size: fc.integer({ min: 1, max: 30 }), price: fc.nat(500) }), {
    minLength: 1,
    maxLength: 4,
  }),
});

const sum = (numbers: readonly number[]): number => numbers.reduce((all, number) => all + number, 0);

describe("combinedPurchase", () => {
  it("buys 32 kg for three as worked by hand: 46.00 together, 24 + 16 + 24 = 64.00 alone", () => {
    // Alone: 12.4 kg are three bags (24.00), 9.3 kg two (16.00), 10.3 kg three (24.00).
    const bought = combinedPurchase({ needs: [12_400, 9300, 10_300], packs: SACK_AND_BAGS, takesLeftOver: null });
    expect(bought).toMatchObject({
      needed: 32_000,
      purchase: { counts: [1, 2], cost: 4600, leftOver: 3000 },
      shares: [1782, 1337, 1481],
      alone: [2400, 1600, 2400],
      saving: 1800,
    });
  });

  it("has whoever takes the left-over pay for it with the own amount", () => {
    // 46.00 for 12.4 + 3, 9.3 and 10.3 kg of 35: 20.24, 12.2228…, 13.5371…
    const bought = combinedPurchase({ needs: [12_400, 9300, 10_300], packs: SACK_AND_BAGS, takesLeftOver: 0 });
    expect(bought.shares).toEqual([2024, 1222, 1354]);
  });

  it("costs the parts together, whoever takes the left-over", () => {
    fc.assert(
      fc.property(someClub, fc.option(fc.nat(11)), ({ needs, packs }, taker) => {
        const takesLeftOver = taker === null ? null : taker % needs.length;
        const { shares, purchase } = combinedPurchase({ needs, packs, takesLeftOver });
        expect(sum(shares)).toBe(purchase.cost);
      }),
    );
  });

  it("is never dearer than all purchases alone", () => {
    fc.assert(
      fc.property(someClub, ({ needs, packs }) => {
        const { saving, alone, purchase } = combinedPurchase({ needs, packs, takesLeftOver: null });
        expect(saving).toBeGreaterThanOrEqual(0);
        expect(saving).toBe(sum(alone) - purchase.cost);
        expect(alone).toEqual(needs.map((needed) => cheapestPacks({ needed, packs }).cost));
      }),
    );
  });

  it("saves nothing for one", () => {
    fc.assert(
      fc.property(fc.nat(100), someClub, (needed, { packs }) => {
        expect(combinedPurchase({ needs: [needed], packs, takesLeftOver: null }).saving).toBe(0);
      }),
    );
  });

  it.each([
    ["nobody", { needs: [], packs: SACK_AND_BAGS, takesLeftOver: null }],
    ["a need below nothing", { needs: [-1], packs: SACK_AND_BAGS, takesLeftOver: null }],
    ["a left-over for somebody else", { needs: [1], packs: SACK_AND_BAGS, takesLeftOver: 1 }],
  ])("refuses %s", (_, order) => {
    expect(() => combinedPurchase(order)).toThrow(OutOfRangeError);
  });
});
