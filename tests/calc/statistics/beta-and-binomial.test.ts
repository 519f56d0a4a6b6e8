import { describe, expect, it } from "vitest";
import { binomialUpperTail, regularisedIncompleteBeta } from "@/lib/calc/statistics";
import { expectPrinted } from "../../support/expect-printed";
import { expectWithin } from "../../support/expect-within";

const beta = (x: number, a: number, b: number): number => regularisedIncompleteBeta({ x, a, b });

describe("regularisedIncompleteBeta", () => {
  it("is x^a where the second shape is 1 and 1 − (1 − x)^b where the first is (closed forms)", () => {
    for (const x of [1e-6, 0.2, 0.5, 0.97])
      for (const shape of [0.05, 0.5, 1, 3, 40]) {
        expectWithin(beta(x, shape, 1) / x ** shape, 1, 1e-12);
        expectWithin(beta(x, 1, shape) / -Math.expm1(shape * Math.log1p(-x)), 1, 1e-12);
      }
  });

  it("is 2/π asin √x for two shapes of one half (closed form)", () => {
    for (const x of [1e-9, 0.1, 0.5, 0.9])
      expectWithin(beta(x, 0.5, 0.5), (2 / Math.PI) * Math.asin(Math.sqrt(x)), 1e-12);
  });

  it("is 11/16 for x = 1/2 with shapes 2 and 3: 12 ∫ t (1 − t)² dt (by hand)", () => {
    expectWithin(beta(0.5, 2, 3), 11 / 16, 1e-12);
  });

  it("is one half in the middle of equal shapes, however large (symmetry)", () => {
    for (const shape of [0.05, 0.5, 1, 10, 1000, 1e6]) expectWithin(beta(0.5, shape, shape), 0.5, 1e-12);
  });

  it("turns round with its end and its shapes (symmetry)", () => {
    for (const x of [0.001, 0.3, 0.6, 0.95])
      for (const [a, b] of [
        [0.7, 4],
        [12, 3],
        [200, 150],
      ] as const)
        expectWithin(beta(x, a, b) + beta(1 - x, b, a), 1, 1e-13);
  });

  it("steps down with the first shape by x^a (1 − x)^b / (a B(a, b)) (A&S 26.5.16)", () => {
    // B(3, 4) = 2! 3! / 6! = 1/60.
    for (const x of [0.1, 0.4, 0.8]) expectWithin(beta(x, 3, 4) - beta(x, 4, 4), 20 * x ** 3 * (1 - x) ** 4, 1e-12);
  });

  it("runs from 0 to 1", () => {
    expect(beta(0, 2, 3)).toBe(0);
    expect(beta(1, 2, 3)).toBe(1);
  });

  it("refuses ends outside 0 to 1 and shapes past theirs", () => {
    expect(() => beta(-0.1, 1, 1)).toThrow("upper end -0.1 is outside 0 to 1");
    expect(() => beta(1.1, 1, 1)).toThrow("upper end 1.1 is outside 0 to 1");
    expect(() => beta(0.5, 0.049, 1)).toThrow("first shape 0.049 is outside 0.05 to 1000000");
    expect(() => beta(0.5, 1, NaN)).toThrow("second shape NaN is outside 0.05 to 1000000");
  });
});

describe("binomialUpperTail", () => {
  it("is a count of cases over 3¹⁰ for seven of ten triangles by guessing: (120·8 + 45·4 + 10·2 + 1)/59049 (by hand)", () => {
    expectWithin(binomialUpperTail({ n: 10, atLeast: 7, p: 1 / 3 }), 1161 / 59049, 1e-12);
  });

  it("adds up to the printed row of four trials at 0.3 (binomial table: 0.240 0.412 0.265 0.076 0.008)", () => {
    const tails = [0, 1, 2, 3, 4, 5].map((atLeast) => binomialUpperTail({ n: 4, atLeast, p: 0.3 }));
    ["0.240", "0.412", "0.265", "0.076", "0.008"].forEach((printed, i) =>
      expectPrinted((tails[i] ?? NaN) - (tails[i + 1] ?? NaN), printed),
    );
    expect(tails[0]).toBe(1);
    expect(tails[5]).toBe(0);
  });

  it("is the sum of its terms (a second method)", () => {
    for (const p of [0, 0.02, 0.5, 0.9, 1])
      for (const n of [1, 12, 60]) {
        let sum = 0;
        for (let k = n; k >= 1; k--) {
          const ways = Array.from({ length: k }, (_, i) => (n - i) / (k - i)).reduce(
            (product, each) => product * each,
            1,
          );
          sum += ways * p ** k * (1 - p) ** (n - k);
          expectWithin(binomialUpperTail({ n, atLeast: k, p }), sum, 1e-13);
        }
      }
  });

  it("keeps the digits of a tail that is nearly impossible: all of a thousand coins", () => {
    expectWithin(binomialUpperTail({ n: 1000, atLeast: 1000, p: 0.5 }) * 2 ** 1000, 1, 1e-12);
  });

  it("is one half for the larger half of an odd number of coins (symmetry)", () => {
    expectWithin(binomialUpperTail({ n: 999_999, atLeast: 500_000, p: 0.5 }), 0.5, 1e-12);
  });

  it("refuses broken, negative and too many trials", () => {
    expect(() => binomialUpperTail({ n: 2.5, atLeast: 1, p: 0.5 })).toThrow(
      "number of trials 2.5 is outside 0 to 1000000",
    );
    expect(() => binomialUpperTail({ n: 2, atLeast: 1.5, p: 0.5 })).toThrow("number of successes 1.5 is outside");
    expect(() => binomialUpperTail({ n: 2, atLeast: -1, p: 0.5 })).toThrow(
      "number of successes -1 is outside 0 to 1000001",
    );
    expect(() => binomialUpperTail({ n: 2, atLeast: 1, p: 1.01 })).toThrow(
      "probability of success 1.01 is outside 0 to 1",
    );
    expect(() => binomialUpperTail({ n: 1_000_001, atLeast: 1, p: 0.5 })).toThrow("number of trials 1000001");
  });
});
