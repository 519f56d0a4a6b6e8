import { describe, expect, it } from "vitest";
import {
  duoTrioMinimumCorrect,
  duoTrioProbability,
  pairedPreferenceProbability,
  triangleMinimumCorrect,
  triangleProbability,
} from "@/lib/calc/judging";
import { DUO_TRIO_ROWS, TRIANGLE_ROWS } from "../../reference/judging";
import { expectPrinted } from "../../support/expect-printed";
import { expectWithin } from "../../support/expect-within";

/** One by one, without the library: n over k, times p^k q^(n−k). */
function tail(n: number, atLeast: number, p: number): number {
  let term = (1 - p) ** n;
  let sum = 0;
  for (let k = 0; k <= n; k++) {
    if (k >= atLeast) sum += term;
    term *= ((n - k) / (k + 1)) * (p / (1 - p));
  }
  return sum;
}

describe("triangleMinimumCorrect", () => {
  it.each(TRIANGLE_ROWS.map(([n, ...printed]) => ({ n, printed })))(
    "matches the row of $n assessors (FAO V7180E, appendix A)",
    ({ n, printed }) => {
      [0.1, 0.05, 0.01, 0.001].forEach((alpha, column) => {
        const correct = printed[column];
        if (typeof correct === "number") expect(triangleMinimumCorrect({ n, alpha })).toBe(correct);
        else expect(() => triangleMinimumCorrect({ n, alpha })).toThrow(`number of assessors ${n} is outside`);
      });
    },
  );

  it("is the fewest whose chance is below alpha, by adding up the terms", () => {
    for (const n of [7, 50, 200]) {
      for (const alpha of [0.2, 0.05, 1e-6]) {
        const correct = triangleMinimumCorrect({ n: n + 20, alpha });
        expect(tail(n + 20, correct, 1 / 3)).toBeLessThanOrEqual(alpha);
        expect(tail(n + 20, correct - 1, 1 / 3)).toBeGreaterThan(alpha);
      }
    }
  });

  it("refuses so few assessors that all of them right would prove nothing", () => {
    expect(() => triangleMinimumCorrect({ n: 2, alpha: 0.05 })).toThrow("number of assessors 2 is outside 3 to 10000");
    expect(triangleMinimumCorrect({ n: 3, alpha: 0.05 })).toBe(3);
    expect(triangleMinimumCorrect({ n: 1, alpha: 0.34 })).toBe(1);
    expect(triangleMinimumCorrect({ n: 10_000, alpha: 0.05 })).toBeGreaterThan(3333);
  });

  it("refuses broken numbers of assessors and a risk that is none", () => {
    expect(() => triangleMinimumCorrect({ n: 24.5, alpha: 0.05 })).toThrow("number of assessors 24.5 is outside");
    expect(() => triangleMinimumCorrect({ n: 10_001, alpha: 0.05 })).toThrow("number of assessors 10001 is outside");
    expect(() => triangleMinimumCorrect({ n: Number.NaN, alpha: 0.05 })).toThrow("number of assessors NaN");
    expect(() => triangleMinimumCorrect({ n: 24, alpha: 0.51 })).toThrow("alpha 0.51 is outside 0.000001 to 0.5");
    expect(() => triangleMinimumCorrect({ n: 24, alpha: 0 })).toThrow("alpha 0 is outside 0.000001 to 0.5");
  });
});

describe("duoTrioMinimumCorrect", () => {
  it.each(DUO_TRIO_ROWS.map(([n, ...printed]) => ({ n, printed })))(
    "matches the row of $n assessors (ISO 10399, table A.1)",
    ({ n, printed }) => {
      [0.2, 0.1, 0.05, 0.01, 0.001].forEach((alpha, column) => {
        const correct = printed[column];
        if (typeof correct === "number") expect(duoTrioMinimumCorrect({ n, alpha })).toBe(correct);
        else expect(() => duoTrioMinimumCorrect({ n, alpha })).toThrow(`number of assessors ${n} is outside`);
      });
    },
  );

  it("counts a chance that is alpha itself as enough", () => {
    // 1/2 to the fifth is 0.03125, to the fourth 0.0625; five of five is as likely as alpha.
    expect(duoTrioMinimumCorrect({ n: 5, alpha: 0.03125 })).toBe(5);
    expect(() => duoTrioMinimumCorrect({ n: 4, alpha: 0.06 })).toThrow("number of assessors 4 is outside 5 to 10000");
    expect(duoTrioMinimumCorrect({ n: 1, alpha: 0.5 })).toBe(1);
  });
});

describe("triangleProbability", () => {
  it("is 0.0664 for 7 of 12 (exact binomial by hand)", () => {
    // Σ C(12, k) 2^(12−k) for k = 7 … 12 is 25344 + 7920 + 1760 + 264 + 24 + 1 = 35313, over 3^12 = 531441.
    const { p, proportionCorrect, proportionOfDiscriminators } = triangleProbability({ n: 12, correct: 7 });
    expectWithin(p, 35313 / 531441, 1e-12);
    expectWithin(proportionCorrect, 7 / 12, 1e-15);
    expectWithin(proportionOfDiscriminators, 0.375, 1e-12);
  });

  it("estimates 0.3125 discriminators from 13 of 24 (1.5 × 13/24 − 0.5)", () => {
    const { proportionOfDiscriminators, low80, high80 } = triangleProbability({ n: 24, correct: 13 });
    expectWithin(proportionOfDiscriminators, 0.3125, 1e-12);
    // Limits of 13 of 24 by SciPy's binomtest, exact at 80 %: 0.3924474 and 0.6852448.
    expectWithin(low80, 1.5 * 0.39244735 - 0.5, 1e-7);
    expectWithin(high80, 1.5 * 0.68524484 - 0.5, 1e-7);
  });

  it("knows the limits of none and all in closed form", () => {
    // None of ten: (1 − p)^10 = 0.1; all of ten: p^10 = 0.1.
    const none = triangleProbability({ n: 10, correct: 0 });
    expect(none).toMatchObject({ proportionCorrect: 0, proportionOfDiscriminators: 0, low80: 0, high80: 0 });
    expectWithin(none.p, 1, 1e-12);
    expectWithin(triangleProbability({ n: 2, correct: 0 }).high80, 1.5 * (1 - Math.sqrt(0.1)) - 0.5, 1e-9);
    const all = triangleProbability({ n: 10, correct: 10 });
    expectWithin(all.p, 3 ** -10, 1e-15);
    expectWithin(all.low80, 1.5 * 0.1 ** 0.1 - 0.5, 1e-9);
    expect(all.high80).toBe(1);
    expect(all.proportionOfDiscriminators).toBe(1);
  });

  it("refuses more right answers than answers", () => {
    expect(() => triangleProbability({ n: 12, correct: 13 })).toThrow("correct answers 13 is outside 0 to 12");
    expect(() => triangleProbability({ n: 12, correct: -1 })).toThrow("correct answers -1 is outside 0 to 12");
    expect(() => triangleProbability({ n: 12, correct: 6.5 })).toThrow("correct answers 6.5 is outside 0 to 12");
    expect(() => triangleProbability({ n: 0, correct: 0 })).toThrow("number of assessors 0 is outside 1 to 10000");
  });
});

describe("duoTrioProbability", () => {
  it("is 0.0577 for 14 of 20 (exact binomial by hand)", () => {
    // 38760 + 15504 + 4845 + 1140 + 190 + 20 + 1 = 60460, over 2^20.
    const result = duoTrioProbability({ n: 20, correct: 14 });
    expectWithin(result.p, 60460 / 1048576, 1e-12);
    expectWithin(result.proportionOfDiscriminators, 0.4, 1e-12);
    // Limits of 14 of 20 by SciPy's binomtest, exact at 80 %.
    expectWithin(result.low80, 2 * 0.53273302 - 1, 1e-7);
    expectWithin(result.high80, 2 * 0.83412762 - 1, 1e-7);
  });

  it("grows less likely by guessing with each right answer", () => {
    for (let correct = 1; correct <= 20; correct++) {
      const before = duoTrioProbability({ n: 20, correct: correct - 1 });
      const after = duoTrioProbability({ n: 20, correct });
      expect(after.p).toBeLessThan(before.p);
      expect(after.high80).toBeGreaterThanOrEqual(before.high80);
    }
  });

  it("refuses more right answers than answers", () => {
    expect(() => duoTrioProbability({ n: 5, correct: 6 })).toThrow("correct answers 6 is outside 0 to 5");
  });
});

describe("pairedPreferenceProbability", () => {
  it("is 0.0414 for 15 of 20, whichever beer they prefer (exact binomial by hand)", () => {
    // 2 × (15504 + 4845 + 1140 + 190 + 20 + 1) = 43400, over 2^20.
    const result = pairedPreferenceProbability({ n: 20, preferring: 15 });
    expectWithin(result.p, 43400 / 1048576, 1e-12);
    expect(result.proportion).toBe(0.75);
    expectWithin(result.low80, 0.58510961, 1e-7);
    expectWithin(result.high80, 0.87307394, 1e-7);
    const other = pairedPreferenceProbability({ n: 20, preferring: 5 });
    expectWithin(other.p, result.p, 1e-15);
    expectWithin(other.low80, 1 - result.high80, 1e-9);
    expectWithin(other.high80, 1 - result.low80, 1e-9);
  });

  it("is certain for a tie, and never more than that", () => {
    expect(pairedPreferenceProbability({ n: 10, preferring: 5 }).p).toBe(1);
    expectPrinted(pairedPreferenceProbability({ n: 1, preferring: 0 }).p, "1");
  });

  it("refuses more who prefer than who taste", () => {
    expect(() => pairedPreferenceProbability({ n: 10, preferring: 11 })).toThrow(
      "number preferring 11 is outside 0 to 10",
    );
    expect(() => pairedPreferenceProbability({ n: 10.5, preferring: 5 })).toThrow("number of assessors 10.5");
  });
});
