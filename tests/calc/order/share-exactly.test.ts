import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { OutOfRangeError } from "@/lib/calc/errors";
import { shareExactly } from "@/lib/calc/order";

const someSplit = fc.record({
  total: fc.integer({ min: 0, max: 1_000_000_000_000_000 }),
  shares: fc
    .array(fc.integer({ min: 0, max: 1_000_000_000_000 }), { minLength: 1, maxLength: 60 })
    .filter((shares) => shares.some((share) => share > 0)),
});

describe("shareExactly", () => {
  it.each([
    // 10.00 by three: 3.33 1/3 each; the first of equal fractions gets the cent.
    { total: 1000, shares: [1, 1, 1], parts: [334, 333, 333] },
    // 46.00 for 12.4, 9.3 and 10.3 kg of 32: 1782.5, 1336.875 and 1480.625 cents; the two left go to .875 and .625.
    { total: 4600, shares: [12_400, 9300, 10_300], parts: [1782, 1337, 1481] },
    { total: 5, shares: [0, 3, 0], parts: [0, 5, 0] },
    { total: 0, shares: [0, 0], parts: [0, 0] },
  ])("splits $total by $shares as by hand", ({ total, shares, parts }) => {
    expect(shareExactly({ total, shares })).toEqual(parts);
  });

  it("gives whole parts that add up to the total exactly, whatever the shares", () => {
    fc.assert(
      fc.property(someSplit, ({ total, shares }) => {
        const parts = shareExactly({ total, shares });
        expect(parts.reduce((sum, part) => sum + BigInt(part), 0n)).toBe(BigInt(total));
      }),
      { numRuns: 1000 },
    );
  });

  it("keeps each part within one unit of the exact one, and nobody without a share pays", () => {
    fc.assert(
      fc.property(someSplit, ({ total, shares }) => {
        const sum = shares.reduce((all, share) => all + BigInt(share), 0n);
        shareExactly({ total, shares }).forEach((part, i) => {
          const share = BigInt(shares[i] ?? 0);
          // part × sum against total × share, in whole numbers
          const off = BigInt(part) * sum - BigInt(total) * share;
          expect(off < sum && off > -sum).toBe(true);
          if (share === 0n) expect(part).toBe(0);
        });
      }),
    );
  });

  it("gives no smaller part to a larger share", () => {
    fc.assert(
      fc.property(someSplit, ({ total, shares }) => {
        const parts = shareExactly({ total, shares: shares.toSorted((a, b) => b - a) });
        expect(parts).toEqual([...parts].sort((a, b) => b - a));
      }),
    );
  });

  it.each([
    ["a share below nothing", { total: 1, shares: [2, -1] }],
    ["half a cent", { total: 0.5, shares: [1] }],
    ["nobody", { total: 1, shares: [] }],
    ["a cost that nobody has a share of", { total: 1, shares: [0, 0] }],
  ])("refuses %s", (_, split) => {
    expect(() => shareExactly(split)).toThrow(OutOfRangeError);
  });
});
