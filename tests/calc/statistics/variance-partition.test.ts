import { describe, expect, it } from "vitest";
import { type PartitionObservation, type VariancePartition, variancePartition } from "@/lib/calc/statistics";
import { DYESTUFF, PENICILLIN } from "../../reference/variance-components";
import { expectPrinted } from "../../support/expect-printed";
import { expectWithin } from "../../support/expect-within";

type Told = Extract<VariancePartition, { ok: true }>;

function partition(observations: readonly PartitionObservation[]): Told {
  const result = variancePartition({ observations });
  if (!result.ok) throw new Error(result.reason);
  return result;
}

/** One batch is one brewer; all share kettle and revision. */
const batches = (groups: readonly (readonly number[])[]): PartitionObservation[] =>
  groups.flatMap((group, i) => group.map((value) => ({ value, brewer: `b${i}`, equipment: "kettle", revision: "1" })));

const PLATES = PENICILLIN.flatMap((row, i) =>
  row.map((value, j) => ({ value, brewer: `plate ${i}`, equipment: `sample ${j}`, revision: "1" })),
);

const TRIO = { brewer: "a", equipment: "k", revision: "1" };

describe("variancePartition", () => {
  it("finds the published variances of the dyestuff: 1764 between batches, 2451 within (Davies; Bates 2010)", () => {
    const result = partition(batches(DYESTUFF));
    expectPrinted(result.mean, "1527.50");
    expectPrinted(result.meanError, "19.38");
    expectPrinted(result.brewer?.variance ?? NaN, "1764.05");
    expectPrinted(result.residual.variance, "2451.25");
    expectWithin(result.brewer?.share ?? NaN, 1764.05 / 4215.3, 1e-6);
    expectWithin(result.residual.share, 2451.25 / 4215.3, 1e-6);
    expect(result.brewer?.levels).toBe(6);
    expect([result.equipment, result.revision]).toEqual([null, null]);
  });

  it("gives its errors as balanced batches have them, by hand", () => {
    // Mean square between 5 · 1764.05 + 2451.25 = 11271.5 on 5, within 2451.25 on 24; each has a variance of 2 MS² / df.
    const result = partition(batches(DYESTUFF));
    expectWithin(result.residual.standardError, 2451.25 * Math.sqrt(2 / 24), 1e-3);
    const between = Math.sqrt((2 * 11271.5 ** 2) / 5 + (2 * 2451.25 ** 2) / 24) / 5;
    expectWithin(result.brewer?.standardError ?? NaN, between, 1e-3);
  });

  it("ends the interval of the rest where the likelihood of balanced batches has fallen by χ² of 80 %, by hand", () => {
    // While the batches are free, twice the fall is 24 (ln (v / 2451.25) + 2451.25 / v − 1); χ² is 1.642 (NIST e-Handbook: 1.642).
    const { low80, high80 } = partition(batches(DYESTUFF)).residual;
    const fall = (v: number): number => 24 * (Math.log(v / 2451.25) + 2451.25 / v - 1);
    expectWithin(fall(low80), 1.642, 0.001);
    expectWithin(fall(high80 ?? NaN), 1.642, 0.001);
    expect(low80 < 2451 && (high80 ?? 0) > 2452).toBe(true);
  });

  it("finds the published variances of crossed plates and samples of penicillin (Bates 2010)", () => {
    const result = partition(PLATES);
    expectPrinted(result.mean, "22.9722");
    expectPrinted(result.meanError, "0.808573");
    expectPrinted(result.brewer?.variance ?? NaN, "0.716908");
    expectPrinted(result.equipment?.variance ?? NaN, "3.73092");
    expectPrinted(result.residual.variance, "0.302415");
    expect([result.brewer?.levels, result.equipment?.levels]).toEqual([24, 6]);
    const shares = [result.brewer, result.equipment, result.residual].reduce(
      (sum, part) => sum + (part?.share ?? 0),
      0,
    );
    expectWithin(shares, 1, 1e-12);
    for (const part of [result.brewer, result.equipment, result.residual]) {
      expect(part?.low80).toBeLessThan(part?.variance ?? NaN);
      expect(part?.high80).toBeGreaterThan(part?.variance ?? NaN);
    }
  });

  it("does not care which factor is which, in which order the brews come, or what unit they are in", () => {
    const base = partition(PLATES);
    const turned = partition(
      [...PLATES].reverse().map((row) => ({
        value: 1000 - 10 * row.value,
        brewer: "all",
        equipment: row.brewer,
        revision: row.equipment,
      })),
    );
    expect(turned.brewer).toBeNull();
    expectWithin((turned.equipment?.variance ?? NaN) / 100, base.brewer?.variance ?? NaN, 1e-6);
    expectWithin((turned.revision?.variance ?? NaN) / 100, base.equipment?.variance ?? NaN, 1e-6);
    expectWithin((turned.revision?.high80 ?? NaN) / 100, base.equipment?.high80 ?? NaN, 1e-4);
    expectWithin(turned.mean, 1000 - 10 * base.mean, 1e-8);
  });

  it("takes gaps: with a tenth of the plates missing the variances stay near", () => {
    const result = partition(PLATES.filter((_, i) => i % 10 !== 3));
    expectWithin(result.brewer?.variance ?? NaN, 0.717, 0.15);
    expectWithin(result.equipment?.variance ?? NaN, 3.73, 0.5);
    expectWithin(result.residual.variance, 0.302, 0.06);
  });

  it("says nothing lies between brewers whose means agree, by hand", () => {
    // Pairs with mean 3: all scatter, 10 on 5 degrees of freedom, is the rest.
    const result = partition(
      batches([
        [1, 5],
        [2, 4],
        [3, 3],
      ]),
    );
    expect(result.brewer).toMatchObject({ variance: 0, share: 0, low80: 0 });
    expect(result.brewer?.high80).toBeGreaterThan(0);
    expectWithin(result.residual.variance, 2, 1e-6);
    expectWithin(result.mean, 3, 1e-12);
    expectWithin(result.meanError, Math.sqrt(2 / 6), 1e-6);
  });

  it("finds the third factor: revisions that lift every brew by the same", () => {
    const observations = [0, 1, 2, 3].flatMap((brewer) =>
      ["1", "2", "3"].flatMap((revision, r) =>
        [0, 1].map((again) => ({
          value: 10 * r + 0.1 * ((brewer * 7 + r * 5 + again * 3) % 4),
          brewer: `b${brewer}`,
          equipment: "k",
          revision,
        })),
      ),
    );
    const result = partition(observations);
    // Revision means lie 10 apart, so their variance is 100; the rest is tenths.
    expectWithin(result.revision?.variance ?? NaN, 100, 2);
    expect(result.revision?.share).toBeGreaterThan(0.999);
  });

  it("names what it cannot tell apart: a brewer who always brews on one kettle", () => {
    const own = DYESTUFF.flatMap((group, i) =>
      group.map((value) => ({ value, brewer: `b${i}`, equipment: `k${i}`, revision: "1" })),
    );
    expect(variancePartition({ observations: own })).toEqual({
      ok: false,
      reason: "confounded",
      together: ["brewer", "equipment"],
    });
    const single = DYESTUFF.flatMap((group, i) =>
      group.map((value, j) => ({ value, brewer: `b${i}.${j}`, equipment: `k${i}`, revision: "1" })),
    );
    expect(variancePartition({ observations: single })).toEqual({
      ok: false,
      reason: "confounded",
      together: ["brewer", "residual"],
    });
  });

  it("says when there is no scatter, no factor or no rest", () => {
    const all = (values: readonly number[]): PartitionObservation[] => values.map((value) => ({ ...TRIO, value }));
    expect(variancePartition({ observations: all([4, 4, 4]) })).toEqual({
      ok: false,
      reason: "no-scatter",
      together: [],
    });
    expect(variancePartition({ observations: all([4, 5, 6]) })).toEqual({
      ok: false,
      reason: "nothing-to-compare",
      together: [],
    });
    const exact = batches([
      [1, 1],
      [2, 2],
      [3, 3],
    ]);
    expect(variancePartition({ observations: exact })).toEqual({ ok: false, reason: "no-residual", together: [] });
  });

  it("refuses too few brews, too many brewers and what is not a number", () => {
    const few = [
      { ...TRIO, value: 1 },
      { ...TRIO, value: 2 },
    ];
    expect(() => variancePartition({ observations: few })).toThrow("number of observations 2 is outside 3 to 2000");
    expect(() => variancePartition({ observations: [...few, { ...TRIO, value: NaN }] })).toThrow(
      "value NaN is outside",
    );
    const many = Array.from({ length: 199 }, (_, i) => ({ ...TRIO, value: i, brewer: `b${i}` }));
    expect(() => variancePartition({ observations: many })).toThrow(
      "number of brewers, kettles and revisions 201 is outside 1 to 200",
    );
  });
});
