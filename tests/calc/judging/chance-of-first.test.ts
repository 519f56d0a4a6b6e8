import { describe, expect, it } from "vitest";
import { adjustForJudge, type AdjustedForJudge, type GappedScores } from "@/lib/calc/judging";
import { expectWithin } from "../../support/expect-within";

type Adjusted = Extract<AdjustedForJudge, { ok: true }>;

function adjusted(scores: GappedScores): Adjusted {
  const outcome = adjustForJudge({ scores, seed: 1 });
  if (!outcome.ok) throw new Error(outcome.reason);
  return outcome;
}

/** Four standard deviations of a share counted in 6000 draws. */
const ofDraws = (share: number): number => 4 * Math.sqrt((share * (1 - share)) / 6000);

describe("the chance of being first", () => {
  /** Judges who each put the first entry ahead by d. */
  const ahead = (lead: number, deviations: readonly number[]): number =>
    adjusted(deviations.map((deviation) => [30 + lead + deviation, 30])).entries[0]?.chanceOfFirst ?? Number.NaN;

  it("is that of Student's t between two entries: 0.90 where t is 1.533 on 4 (NIST/SEMATECH table)", () => {
    // Deviations −2 … 2 have sd 1.5811, so the error of the lead of five judges is 0.70711.
    expectWithin(ahead(1.533 * Math.SQRT1_2, [-2, -1, 0, 1, 2]), 0.9, ofDraws(0.9));
  });

  it("is 1/2 + atan(t)/π on one degree of freedom (Cauchy)", () => {
    // Two judges: deviations ±1 have sd √2, error 1.
    expectWithin(ahead(1, [-1, 1]), 0.75, ofDraws(0.75));
    expectWithin(ahead(-2, [-1, 1]), 0.5 - Math.atan(2) / Math.PI, ofDraws(0.15));
  });

  it("is 0.90 where t is 1.304 on 39, with forty judges (NIST/SEMATECH table)", () => {
    // Twenty deviations of 1 and of −1: sd √(40/39), error √(1/39).
    const deviations = Array.from({ length: 40 }, (_, judge) => (judge % 2 === 0 ? 1 : -1));
    expectWithin(ahead(1.304 / Math.sqrt(39), deviations), 0.9, ofDraws(0.9));
  });

  it("is the same for entries that nothing tells apart", () => {
    const { entries } = adjusted([
      [30, 31, 32],
      [31, 32, 30],
      [32, 30, 31],
    ]);
    for (const { chanceOfFirst } of entries) expectWithin(chanceOfFirst, 1 / 3, ofDraws(1 / 3));
  });

  it("is all with the leader where judges agree but for a billionth of a point", () => {
    const { entries, residualSd } = adjusted([
      [30, 35, 40],
      [28, 33, 38 + 1e-9],
      [29, 34, 39],
    ]);
    expect(residualSd).toBeGreaterThan(0);
    expect(entries.map(({ chanceOfFirst }) => chanceOfFirst)).toEqual([0, 0, 1]);
  });

  it("is shared by those level at the top where judges leave no scatter, and all of it is for one alone", () => {
    const clear = adjusted([
      [30, 35, 33],
      [27, 32, 30],
    ]);
    expect(clear.residualSd).toBe(0);
    expect(clear.entries.map(({ chanceOfFirst }) => chanceOfFirst)).toEqual([0, 1, 0]);
    expect(clear.entries.map(({ standardError }) => standardError)).toEqual([0, 0, 0]);
    expect(clear.entries[1]).toMatchObject({ adjusted: 33.5, low80: 33.5, high80: 33.5 });
    const level = adjusted([
      [30.1, 35.2, 35.2],
      [27.4, 32.5, 32.5],
    ]);
    expect(level.residualSd).toBe(0);
    expect(level.entries.map(({ chanceOfFirst }) => chanceOfFirst)).toEqual([0, 0.5, 0.5]);
  });
});
