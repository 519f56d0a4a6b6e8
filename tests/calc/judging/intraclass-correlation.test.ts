import { describe, expect, it } from "vitest";
import { intraclassCorrelation, type IntraclassCorrelation, type IntraclassForm } from "@/lib/calc/judging";
import { ANXIETY, SHROUT_FLEISS } from "../../reference/judging";
import { expectPrinted } from "../../support/expect-printed";
import { expectWithin } from "../../support/expect-within";

type Found = Extract<IntraclassCorrelation, { ok: true }>;

function found(scores: readonly (readonly number[])[], form: IntraclassForm, confidence = 0.95): Found {
  const outcome = intraclassCorrelation({ scores, form, confidence });
  if (!outcome.ok) throw new Error(outcome.reason);
  return outcome;
}

/** Shrout and Fleiss 1979, table 4, and the output of two R packages for their data. */
const TABLE_4 = [
  { form: "1,1", printed: "0.17", more: "0.166", f: "1.79", df2: 18, p: "0.164769", low: "-0.133", high: "0.72" },
  { form: "2,1", printed: "0.29", more: "0.290", f: "11.03", df2: 15, p: "0.000135", low: "0.019", high: "0.76" },
  { form: "3,1", printed: "0.71", more: "0.715", f: "11.03", df2: 15, p: "0.000135", low: "0.342", high: "0.95" },
  { form: "1,k", printed: "0.44", more: "0.443", f: "1.79", df2: 18, p: "0.164769", low: "-0.884", high: "0.91" },
  { form: "2,k", printed: "0.62", more: "0.620", f: "11.03", df2: 15, p: "0.000135", low: "0.071", high: "0.93" },
  { form: "3,k", printed: "0.91", more: "0.909", f: "11.03", df2: 15, p: "0.000135", low: "0.676", high: "0.99" },
] as const;

describe("intraclassCorrelation", () => {
  it("splits the scatter into the mean squares of table 3 (Shrout and Fleiss 1979)", () => {
    const { meanSquares } = found(SHROUT_FLEISS, "1,1");
    expectPrinted(meanSquares.entries, "11.24");
    expectPrinted(meanSquares.within, "6.26");
    expectPrinted(meanSquares.judges, "32.49");
    expectPrinted(meanSquares.residual, "1.02");
  });

  it.each(TABLE_4)("is $printed for form ($form), $low to $high (Shrout and Fleiss 1979, table 4)", (row) => {
    const outcome = found(SHROUT_FLEISS, row.form);
    expectPrinted(outcome.icc, row.printed);
    expectPrinted(outcome.icc, row.more);
    expectPrinted(outcome.f, row.f);
    expect(outcome.df1).toBe(5);
    expect(outcome.df2).toBe(row.df2);
    expectPrinted(outcome.p, row.p);
    expectPrinted(outcome.low ?? Number.NaN, row.low);
    expectPrinted(outcome.high, row.high);
  });

  it("is 0.198, −0.039 to 0.494, for three raters of anxiety (R package output)", () => {
    const { icc, low, high } = found(ANXIETY, "2,1");
    expectPrinted(icc, "0.198");
    expectPrinted(low ?? Number.NaN, "-0.039");
    expectPrinted(high, "0.494");
  });

  it("steps up from one judge to the panel by Spearman and Brown", () => {
    for (const model of ["1", "2", "3"] as const) {
      const one = found(ANXIETY, `${model},1`).icc;
      expectWithin(found(ANXIETY, `${model},k`).icc, (3 * one) / (1 + 2 * one), 1e-12);
    }
  });

  it("does not mind severity in form 3 and does in forms 1 and 2", () => {
    const severe = SHROUT_FLEISS.map((row, judge) => row.map((score) => score - 3 * judge));
    expectWithin(found(severe, "3,1").icc, found(SHROUT_FLEISS, "3,1").icc, 1e-12);
    expect(found(severe, "2,1").icc).not.toBeCloseTo(found(SHROUT_FLEISS, "2,1").icc, 3);
  });

  it("does not mind the zero and the unit of the scale", () => {
    const scaled = SHROUT_FLEISS.map((row) => row.map((score) => 10 * score - 40));
    for (const { form } of TABLE_4) {
      expectWithin(found(scaled, form).icc, found(SHROUT_FLEISS, form).icc, 1e-12);
      expectWithin(found(scaled, form).high, found(SHROUT_FLEISS, form).high, 1e-9);
    }
  });

  it("gives wider limits for more confidence", () => {
    for (const { form } of TABLE_4) {
      const narrow = found(SHROUT_FLEISS, form, 0.5);
      const wide = found(SHROUT_FLEISS, form, 0.99);
      expect(wide.low ?? -Infinity).toBeLessThan(narrow.low ?? -Infinity);
      expect(wide.high).toBeGreaterThan(narrow.high);
    }
  });

  it("says so where entries do not differ", () => {
    // Both entries have the mean 5.
    const level = [
      [4, 6],
      [6, 4],
    ];
    for (const { form } of TABLE_4) {
      expect(intraclassCorrelation({ scores: level, form, confidence: 0.95 })).toMatchObject({
        ok: false,
        reason: "no-differences",
        meanSquares: { entries: 0 },
      });
    }
  });

  it("says so where judges leave nothing unexplained", () => {
    const shifted = [
      [30.1, 35.3, 40.7],
      [28.1, 33.3, 38.7],
    ];
    expect(intraclassCorrelation({ scores: shifted, form: "3,1", confidence: 0.95 })).toMatchObject({
      ok: false,
      reason: "no-scatter",
      meanSquares: { residual: 0 },
    });
    expect(intraclassCorrelation({ scores: shifted, form: "2,k", confidence: 0.95 }).ok).toBe(false);
    // Form 1 counts the shift as scatter: between entries 56.19…, within 2: 26.09 / 30.09.
    expectWithin(found(shifted, "1,1").icc, (56.1867 - 2) / (56.1867 + 2), 0.0001);
  });

  it("takes judges who agree but for a billionth of a point", () => {
    const near = [
      [30, 35, 40],
      [28, 33, 38 + 1e-9],
    ];
    const { icc, p, low, high } = found(near, "3,1");
    expectWithin(icc, 1, 1e-12);
    expectWithin(p, 0, 1e-9);
    expectWithin(low ?? Number.NaN, 1, 1e-9);
    expect(high).toBeLessThanOrEqual(1);
  });

  it("says so where a variance would be negative", () => {
    // BMS 0.25, JMS 0.25, EMS 6.25: (0.25 − 6.25) / (0.25 + 6.25 + 2 (0.25 − 6.25) / 2) = −12 is no correlation.
    const scores = [
      [5, 2],
      [2, 4],
    ];
    for (const form of ["2,1", "2,k"] as const) {
      expect(intraclassCorrelation({ scores, form, confidence: 0.95 })).toMatchObject({
        ok: false,
        reason: "negative-variance",
        meanSquares: { entries: 0.25, judges: 0.25, residual: 6.25 },
      });
    }
    // Form 3 stays at its end: (0.25 − 6.25) / (0.25 + 6.25).
    expectWithin(found(scores, "3,1").icc, -6 / 6.5, 1e-12);
  });

  it("refuses gaps, one judge, an unknown form and a confidence of certainty", () => {
    const a = { scores: SHROUT_FLEISS, form: "2,1", confidence: 0.95 } as const;
    expect(() => intraclassCorrelation({ ...a, scores: [[1, 2]] })).toThrow("number of judges 1 is outside 2 to 1000");
    expect(() => intraclassCorrelation({ ...a, scores: [[1, 2], [null, 2] as never] })).toThrow(
      "score of judge 2 for entry 1 NaN",
    );
    expect(() => intraclassCorrelation({ ...a, form: "4,1" as never })).toThrow(
      "model of the correlation 4 is outside 1 to 3",
    );
    expect(() => intraclassCorrelation({ ...a, confidence: 1 })).toThrow("confidence 1 is outside 0.5 to 0.99");
    expect(() => intraclassCorrelation({ ...a, confidence: 0.49 })).toThrow("confidence 0.49 is outside 0.5 to 0.99");
  });
});
