import { describe, expect, it } from "vitest";
import { requiredAssessors, triangleProbability, type RequiredAssessors } from "@/lib/calc/judging";
import { TRIANGLE_ASSESSORS } from "../../reference/judging";
import { expectWithin } from "../../support/expect-within";

const BETAS = [0.2, 0.1, 0.05, 0.01, 0.001] as const;
const plan = { proportionOfDiscriminators: 0.5, alpha: 0.05, beta: 0.05, test: "triangle" } as const;
const numberOf = (outcome: RequiredAssessors): number => (outcome.ok ? outcome.assessors : Number.NaN);

describe("requiredAssessors", () => {
  it.each(TRIANGLE_ASSESSORS.map(([share, ...row]) => ({ share, row })))(
    "matches the row of a share of $share (ISO 4120:2004, table A.3, from memory)",
    ({ share, row }) => {
      BETAS.forEach((beta, column) => {
        expect(numberOf(requiredAssessors({ ...plan, proportionOfDiscriminators: share, beta }))).toBe(row[column]);
      });
    },
  );

  it("asks for 23 assessors and 12 right answers to find a half, with both risks 0.048", () => {
    // With half who can tell, two thirds are right: wrong answers are then as rare as right ones by guessing, so the risks
    // are alike, P(12 or more of 23 | 1/3).
    const outcome = requiredAssessors(plan);
    expect(outcome).toMatchObject({ ok: true, assessors: 23, minimumCorrect: 12 });
    if (!outcome.ok) return;
    expectWithin(outcome.alpha, triangleProbability({ n: 23, correct: 12 }).p, 1e-12);
    expectWithin(outcome.beta, outcome.alpha, 1e-12);
  });

  it("asks for more in a duo-trio test, where guessing is easier", () => {
    // By adding up binomial terms: 42 assessors for a half, 67 for two fifths.
    expect(numberOf(requiredAssessors({ ...plan, test: "duo-trio" }))).toBe(42);
    expect(numberOf(requiredAssessors({ ...plan, test: "duo-trio", proportionOfDiscriminators: 0.4 }))).toBe(67);
  });

  it("asks for three triangles, or five pairs, where everyone can tell", () => {
    // 1/27 and 1/32 are the first powers below 0.05.
    const sure = { ...plan, proportionOfDiscriminators: 1 };
    expect(requiredAssessors(sure)).toMatchObject({ ok: true, assessors: 3, minimumCorrect: 3, beta: 0 });
    expect(requiredAssessors({ ...sure, test: "duo-trio" })).toMatchObject({
      ok: true,
      assessors: 5,
      minimumCorrect: 5,
    });
  });

  it("says so where 10 000 would not do, and how large the risk stays", () => {
    const hopeless = requiredAssessors({
      proportionOfDiscriminators: 0.05,
      alpha: 0.001,
      beta: 0.001,
      test: "duo-trio",
    });
    expect(hopeless).toMatchObject({ ok: false, reason: "more-than-10000-assessors" });
    // Normal approximation: 5250 expected right answers against 5000 + 3.09 × 50 needed, 95.5 / 49.9 = 1.9 deviations.
    if (!hopeless.ok) expectWithin(hopeless.beta, 0.028, 0.002);
  });

  it("refuses a share or a risk out of range and a test it does not know", () => {
    expect(() => requiredAssessors({ ...plan, proportionOfDiscriminators: 0.04 })).toThrow(
      "share of discriminators 0.04 is outside 0.05 to 1",
    );
    expect(() => requiredAssessors({ ...plan, proportionOfDiscriminators: 1.1 })).toThrow(
      "share of discriminators 1.1",
    );
    expect(() => requiredAssessors({ ...plan, alpha: 0.0009 })).toThrow("alpha 0.0009 is outside 0.001 to 0.5");
    expect(() => requiredAssessors({ ...plan, beta: 0.6 })).toThrow("beta 0.6 is outside 0.001 to 0.5");
    expect(() => requiredAssessors({ ...plan, test: "tetrad" as never })).toThrow("chance to guess right undefined");
  });
});
