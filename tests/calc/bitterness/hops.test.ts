import { describe, expect, it } from "vitest";
import { alphaLostFromStorageIndex, dryHopRate } from "@/lib/calc/bitterness";
import { grams, litres } from "@/lib/calc/units";
import { expectWithin } from "../../support/expect-within";

describe("alphaLostFromStorageIndex", () => {
  it.each([
    { index: 0.25, percent: 0, within: 1e-9 },
    { index: 0.31, percent: 10.28, within: 0.05 },
    { index: 0.4, percent: 22.45, within: 0.05 },
    { index: 2, percent: 99.34, within: 0.01 },
  ])("is $percent % at an index of $index (110 log10(index / 0.25), by hand)", ({ index, percent, within }) => {
    expectWithin(100 * alphaLostFromStorageIndex(index), percent, within);
  });

  it("lies between the lines of the mildest and the worst crop year (Nickerson and Likens 1979)", () => {
    for (const index of [0.3, 0.5, 1]) {
      const loss = 100 * alphaLostFromStorageIndex(index);
      expect(loss).toBeGreaterThan(101.8 * Math.log10(index / 0.25));
      expect(loss).toBeLessThan(114.6 * Math.log10(index / 0.25));
    }
  });

  it("finds nothing lost of hops fresher than fresh", () => {
    expect(alphaLostFromStorageIndex(0.2)).toBe(0);
    expect(alphaLostFromStorageIndex(0.24)).toBe(0);
  });

  it("refuses an index that no hops have", () => {
    expect(() => alphaLostFromStorageIndex(0.19)).toThrow("hop storage index 0.19 is outside 0.2 to 2");
    expect(() => alphaLostFromStorageIndex(2.01)).toThrow("hop storage index 2.01 is outside 0.2 to 2");
    expect(() => alphaLostFromStorageIndex(NaN)).toThrow("hop storage index NaN is outside 0.2 to 2");
  });
});

describe("dryHopRate", () => {
  const rate = (hops: number, beer: number): number => dryHopRate({ grams: grams(hops), litres: litres(beer) });

  it("is 5 g/L for 100 g in 20 L (definition)", () => {
    expect(rate(100, 20)).toBe(5);
    expect(rate(0, 20)).toBe(0);
  });

  it("refuses a thimble of beer and more hops than beer", () => {
    expect(() => rate(100, 0.09)).toThrow("beer 0.09 L is outside 0.1 to 100000 L");
    expect(() => rate(1001, 1)).toThrow("concentration 1001 g/L is outside 0 to 1000 g/L");
    expect(() => dryHopRate({ grams: -1, litres: 20 } as never)).toThrow("hops -1 g is outside");
  });
});
