import { describe, expect, it } from "vitest";
import { adjustForJudge, type AdjustedForJudge, type GappedScores } from "@/lib/calc/judging";
import { CATALYSTS } from "../../reference/judging";
import { expectPrinted } from "../../support/expect-printed";
import { expectWithin } from "../../support/expect-within";

type Adjusted = Extract<AdjustedForJudge, { ok: true }>;

function adjusted(scores: GappedScores, seed = 1): Adjusted {
  const outcome = adjustForJudge({ scores, seed });
  if (!outcome.ok) throw new Error(outcome.reason);
  return outcome;
}

/** Deviations that add up to nothing over judges and over entries are all that is left of such a table. */
const FULL = [
  [31, 36, 40, 29],
  [27, 35, 37, 33],
  [35, 40, 40, 33],
];

/** A fixed table of 9 judges and 14 entries, each judge with gaps of his or her own. */
const GAPPED: GappedScores = Array.from({ length: 9 }, (_, judge) =>
  Array.from({ length: 14 }, (__, entry) =>
    (3 * judge + 5 * entry) % 4 === 0 ? null : 30 + ((7 * judge + 11 * entry + judge * entry) % 13) - judge,
  ),
);

/** Four standard deviations of a share counted in 6000 draws. */
const ofDraws = (share: number): number => 4 * Math.sqrt((share * (1 - share)) / 6000);

describe("adjustForJudge on incomplete blocks", () => {
  const { entries, judges, residualSd, df } = adjusted(CATALYSTS);

  it("adjusts the four catalysts to 71.375, 71.625, 72 and 75 (Montgomery, example 4.5)", () => {
    // Mean 72.5 and effects of treatments −9/8, −7/8, −4/8 and 20/8.
    ["71.375", "71.625", "72.000", "75.000"].forEach((printed, entry) => {
      expectPrinted(entries[entry]?.adjusted ?? Number.NaN, printed);
    });
  });

  it("leaves a mean square of 0.65 on five degrees of freedom (Montgomery, example 4.5)", () => {
    expect(df).toBe(5);
    expectWithin(residualSd ** 2, 0.65, 1e-12);
  });

  it("gives each mean the error of a balanced incomplete block design (by hand)", () => {
    // σ² (1/12 + k (a − 1) / (λ a²)) = 0.65 × (1/12 + 9/32) = 0.23698.
    for (const { standardError } of entries) expectWithin(standardError, Math.sqrt(0.65 * (1 / 12 + 9 / 32)), 1e-12);
  });

  it("reaches 1.476 errors to either side in 80 of 100 cases (t of 0.90 on 5, NIST/SEMATECH)", () => {
    for (const { adjusted: mean, standardError, low80, high80 } of entries) {
      expectPrinted((high80 - mean) / standardError, "1.476");
      expectWithin(mean - low80, high80 - mean, 1e-12);
    }
  });

  it("finds batches severe by −0.875, −3, 3.875 and 0 (normal equations by hand)", () => {
    [-0.875, -3, 3.875, 0].forEach((severity, judge) => {
      expectWithin(judges[judge]?.severity ?? Number.NaN, severity, 1e-12);
      // Here batches are to catalysts what catalysts are to batches: σ² × 9/32.
      expectWithin(judges[judge]?.standardError ?? Number.NaN, Math.sqrt((0.65 * 9) / 32), 1e-12);
    });
  });

  it("gives the fourth catalyst 0.9935 of the first place (ten million draws of the multivariate t elsewhere)", () => {
    [0.00125, 0.00186, 0.00335, 0.99354].forEach((chance, entry) => {
      expectWithin(entries[entry]?.chanceOfFirst ?? Number.NaN, chance, ofDraws(chance));
    });
  });

  it("shows how widely each batch scatters", () => {
    // 73, 73, 75: sd 1.1547; adjusted 71.375, 72, 75: mean 72.7917, squares 2.0069 + 0.6267 + 4.8767 = 7.5104.
    expectWithin(judges[0]?.spread ?? Number.NaN, Math.sqrt(4 / 3), 1e-12);
    expectWithin(judges[0]?.expectedSpread ?? Number.NaN, Math.sqrt(7.51042 / 2), 1e-5);
    // Left of it: 73 − 71.375 − 0.875 = 0.75, 73 − 72 − 0.875 = 0.125, 75 − 75 − 0.875 = −0.875.
    expectWithin(judges[0]?.scatter ?? Number.NaN, Math.sqrt((0.75 ** 2 + 0.125 ** 2 + 0.875 ** 2) / 3), 1e-12);
  });
});

describe("adjustForJudge on a full table", () => {
  const { entries, judges, residualSd, df } = adjusted(FULL);

  it("leaves the means of the entries as they are", () => {
    [31, 37, 39, 95 / 3].forEach((mean, entry) => {
      expectWithin(entries[entry]?.adjusted ?? Number.NaN, mean, 1e-12);
    });
  });

  it("has errors σ/√judges for entries and σ √((1 − 1/judges)/entries) for judges", () => {
    expect(df).toBe(6);
    for (const { standardError } of entries) expectWithin(standardError, residualSd / Math.sqrt(3), 1e-12);
    for (const { standardError } of judges) expectWithin(standardError, residualSd * Math.sqrt(2 / 3 / 4), 1e-12);
  });

  it("finds severity as the distance of the judges' means from the grand mean", () => {
    // Judges' means 34, 33 and 37; grand mean 104/3.
    [34, 33, 37].forEach((mean, judge) => {
      expectWithin(judges[judge]?.severity ?? Number.NaN, 104 / 3 - mean, 1e-12);
    });
  });
});

describe("adjustForJudge on a table with gaps", () => {
  const { entries, judges, residualSd, df } = adjusted(GAPPED);
  const left = GAPPED.map((row, judge) =>
    row.map((score, entry) =>
      score === null ? 0 : score - (entries[entry]?.adjusted ?? 0) + (judges[judge]?.severity ?? 0),
    ),
  );

  it("solves the normal equations: what is left adds up to nothing for each judge and each entry", () => {
    for (const row of left) {
      expectWithin(
        row.reduce((sum, rest) => sum + rest, 0),
        0,
        1e-9,
      );
    }
    for (let entry = 0; entry < 14; entry++) {
      expectWithin(
        left.reduce((sum, row) => sum + (row[entry] ?? 0), 0),
        0,
        1e-9,
      );
    }
    expectWithin(
      judges.reduce((sum, { severity }) => sum + severity, 0),
      0,
      1e-9,
    );
  });

  it("takes the scatter from what is left", () => {
    const scores = GAPPED.flat().filter((score) => score !== null).length;
    expect(df).toBe(scores - 14 - 9 + 1);
    expectWithin(residualSd ** 2, left.flat().reduce((sum, rest) => sum + rest * rest, 0) / df, 1e-9);
  });

  it("does not mind a judge who is three points milder with everything", () => {
    const milder = adjusted(
      GAPPED.map((row, judge) => (judge === 4 ? row.map((s) => (s === null ? null : s + 3)) : row)),
    );
    entries.forEach(({ adjusted: mean, standardError }, entry) => {
      // The average judge is a third of a point milder.
      expectWithin((milder.entries[entry]?.adjusted ?? 0) - mean, 3 / 9, 1e-9);
      expectWithin(milder.entries[entry]?.standardError ?? 0, standardError, 1e-9);
    });
    expectWithin((milder.judges[4]?.severity ?? 0) - (judges[4]?.severity ?? 0), -3 * (8 / 9), 1e-9);
  });

  it("knows less of an entry that fewer judges tasted", () => {
    const fewer = adjusted(GAPPED.map((row, judge) => row.map((s, entry) => (entry === 1 && judge > 4 ? null : s))));
    expect((fewer.entries[1]?.standardError ?? 0) / fewer.residualSd).toBeGreaterThan(
      (entries[1]?.standardError ?? 0) / residualSd,
    );
  });

  it("shares the first place out to all, the same for the same seed", () => {
    const chances = entries.map(({ chanceOfFirst }) => chanceOfFirst);
    expectWithin(
      chances.reduce((sum, chance) => sum + chance, 0),
      1,
      1e-12,
    );
    expect(adjusted(GAPPED, 1)).toEqual(adjusted(GAPPED, 1));
    expect(adjusted(GAPPED, 2).entries.map(({ chanceOfFirst }) => chanceOfFirst)).not.toEqual(chances);
  });
});
