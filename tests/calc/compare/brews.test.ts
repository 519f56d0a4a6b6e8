import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { compareBrews, compareTwoBrews, partitionBrews, thinCurve, type BrewResult } from "@/lib/calc/compare";
import { expectPrinted } from "../../support/expect-printed";
import { expectWithin } from "../../support/expect-within";

const brewOf = (id: string, measured: number, change: Partial<BrewResult> = {}): BrewResult => ({
  ...{ id, planned: 12, measured, sd: 0.25, group: id },
  ...change,
});

/** docs/worked-examples.md#brews-side-by-side */
const TWO = [brewOf("a", 12.4), brewOf("b", 11.2)];
const FOUR = [
  ...[brewOf("a", 12, { group: "A" }), brewOf("b", 12.4, { group: "A" })],
  ...[brewOf("c", 11, { group: "B" }), brewOf("d", 11.2, { group: "B" })],
];

/** NIST/SEMATECH e-Handbook 1.3.5.17.1: uranium isotopes, of which the last is an outlier. */
const URANIUM = [199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57];

describe("compareBrews", () => {
  it("tells two brews apart, and how little two prove, by hand", () => {
    const { mean, chance, detectable, between, outliers } = compareBrews({ brews: TWO, as: "measured" });
    expectPrinted(mean?.value ?? NaN, "11.8");
    expectPrinted(mean?.low80 ?? NaN, "9.953");
    expectPrinted(mean?.high80 ?? NaN, "13.647");
    expectPrinted(chance?.q ?? NaN, "11.52");
    expectPrinted(chance?.p ?? NaN, "0.00069");
    expectPrinted(detectable ?? NaN, "1.918");
    // With two the spread has no end, and nobody is far from the others.
    expect(between).toBeNull();
    expect(outliers).toEqual({ ok: false, reason: "too-few" });
  });

  it("says of one brew what it is, and nothing of others", () => {
    const compared = compareBrews({ brews: [brewOf("a", 12.4)], as: "difference" });
    expectPrinted(compared.results[0]?.value ?? NaN, "0.4");
    expectPrinted(compared.results[0]?.low80 ?? NaN, "0.0796");
    expect(compared).toMatchObject({
      description: null,
      mean: null,
      chance: null,
      detectable: null,
      againstPlan: null,
    });
  });

  it("gives groups the interval of the scatter within them, by hand", () => {
    const { groups, anova } = compareBrews({ brews: FOUR, as: "measured" }).grouped;
    expect(groups.map(({ name, n }) => [name, n])).toEqual([
      ["A", 2],
      ["B", 2],
    ]);
    expectPrinted(anova?.f ?? NaN, "24.2");
    expectPrinted(groups[0]?.low80 ?? NaN, "11.902");
    expectPrinted(groups[1]?.high80 ?? NaN, "11.398");
  });

  it("names the published outlier of uranium, by Grubbs' test at 5 % (NIST e-Handbook: G 2.469)", () => {
    const brews = URANIUM.map((value) => brewOf(String(value), value));
    const { outliers } = compareBrews({ brews, as: "measured" });
    if (!outliers.ok) throw new Error(outliers.reason);
    expect(outliers).toMatchObject({ test: "Grubbs", level: 0.05, stray: [{ id: "245.57" }] });
    expectPrinted(outliers.stray[0]?.statistic ?? NaN, "2.469");
  });

  it("names two strays among many by the modified z, which do not hide each other, by hand", () => {
    // Median 5, deviations 5 4 3 2 1 0 0 1 2 3 4 95 96 about it: their median is 3.
    const values = [0, 1, 2, 3, 4, 5, 5, 6, 7, 8, 9, 100, 101];
    const { outliers } = compareBrews({ brews: values.map((v, i) => brewOf(String(i), v)), as: "measured" });
    if (!outliers.ok) throw new Error(outliers.reason);
    expect(outliers).toMatchObject({ test: "modified z", level: null, critical: 3.5 });
    expect(outliers.stray.map(({ id }) => id)).toEqual(["11", "12"]);
    expectPrinted(outliers.stray[0]?.statistic ?? NaN, "21.36");
  });

  it("names nobody among many of which most are the same: they have no scatter to be far from", () => {
    const values = [5, 5, 5, 5, 5, 5, 5, 5, 5, 5, 5, 6, 9];
    const { outliers } = compareBrews({ brews: values.map((v, i) => brewOf(String(i), v)), as: "measured" });
    expect(outliers).toEqual({ ok: false, reason: "no-scatter" });
  });

  it("compares differences from the plan alike whatever the plans are", () => {
    const plan = fc.array(fc.double({ min: 5, max: 60, noNaN: true }), { minLength: 3, maxLength: 12 });
    fc.assert(
      fc.property(plan, (plans) => {
        const off = plans.map((_, i) => Math.sin(i));
        const at = (shift: (i: number) => number) =>
          compareBrews({
            brews: off.map((d, i) => brewOf(String(i), shift(i) + d, { planned: shift(i) })),
            as: "difference",
          });
        const [there, here] = [at((i) => plans[i] ?? 0), at(() => 0)];
        expectWithin(there.mean?.value ?? NaN, here.mean?.value ?? NaN, 1e-9);
        expectWithin(there.chance?.q ?? NaN, here.chance?.q ?? NaN, 1e-6);
      }),
      { numRuns: 20 },
    );
  });

  it("refuses no brew, and a value that is no number", () => {
    expect(() => compareBrews({ brews: [], as: "measured" })).toThrow("number of brews 0 is outside 1 to 2000");
    expect(() => compareBrews({ brews: [brewOf("a", NaN)], as: "measured" })).toThrow("measured value NaN");
  });
});

describe("compareTwoBrews", () => {
  const row = (quantity: string, planned: number, measured: number, sd = Math.SQRT1_2) => ({
    ...{ quantity, planned, measured, sd },
  });

  it("raises probabilities by Holm's rule, by hand: 0.01, 0.04, 0.03, 0.005 become 0.03, 0.06, 0.06, 0.02", () => {
    // Normal deviates of these two-sided probabilities, as tables print them.
    const first = [2.5758, 2.0537, 2.1701, 2.807].map((z, i) => row(`q${i}`, 0, z));
    const second = first.map(({ quantity }) => row(quantity, 0, 0));
    const rows = compareTwoBrews({ first, second });
    ["0.0300", "0.0600", "0.0600", "0.0200"].forEach((p, i) => expectPrinted(rows[i]?.adjustedP ?? NaN, p));
    expect(rows.map(({ isBeyondChance }) => isBeyondChance)).toEqual([true, false, false, true]);
  });

  it("leaves out of account by how much the plans differ", () => {
    const [found] = compareTwoBrews({ first: [row("v", 20, 19.2, 0.3)], second: [row("v", 45, 44.8, 0.4)] });
    expectPrinted(found?.measuredDifference ?? NaN, "-25.6");
    expectPrinted(found?.plannedDifference ?? NaN, "-25");
    expectPrinted(found?.beyondPlan ?? NaN, "-0.6");
    expectPrinted(found?.sd ?? NaN, "0.5");
    expectPrinted(found?.low80 ?? NaN, "-1.241");
    expect(found?.isBeyondChance).toBe(false);
  });

  it("is the same the other way round, with the sign turned, and leaves out what one has not", () => {
    const [a, b] = [[row("x", 1, 2), row("y", 5, 9)], [row("x", 1, 4)]];
    const [there, back] = [compareTwoBrews({ first: a, second: b }), compareTwoBrews({ first: b, second: a })];
    expect(there.map(({ quantity }) => quantity)).toEqual(["x"]);
    expect(there[0]?.p).toBe(back[0]?.p);
    expect(there[0]?.beyondPlan).toBe(-(back[0]?.beyondPlan ?? NaN));
  });
});

describe("partitionBrews", () => {
  const observation = (value: number, brewer: string, equipment: string, revision = "1") => ({
    ...{ value, brewer, equipment, revision },
  });

  it("says plainly that brewers who brewed once each cannot be told from the rest, and tells the kettles", () => {
    const values = [12.1, 12.3, 12.2, 10.9, 11.2, 11];
    const partition = partitionBrews({
      observations: values.map((value, i) => observation(value, `b${i}`, i < 3 ? "basket" : "bag")),
    });
    expect(partition.untold).toEqual([{ factor: "brewer", together: ["residual"] }]);
    expect(partition.ok && partition.brewer === null && (partition.equipment?.share ?? 0) > 0.8).toBe(true);
  });

  it("tells of two or one that they are too few, and of equal ones that there is nothing to split", () => {
    expect(partitionBrews({ observations: [observation(1, "a", "x"), observation(2, "b", "x")] })).toEqual({
      ...{ ok: false, reason: "too-few", untold: [] },
    });
    const equal = ["a", "a", "b"].map((brewer) => observation(12, brewer, "x"));
    expect(partitionBrews({ observations: equal })).toMatchObject({ ok: false, reason: "no-scatter" });
  });
});

describe("thinCurve", () => {
  it("keeps the corner of a curve, by hand", () => {
    const points = [0, 1, 2, 3, 4, 5].map((t): [number, number] => [t, t === 2 ? 9 : 1]);
    // Two spans, of 1 and 2 and of 3 and 4: of the first the peak is kept.
    expect(thinCurve({ points, most: 4 }).slice(0, 2)).toEqual([
      [0, 1],
      [2, 9],
    ]);
  });

  it("keeps both ends, invents no point, and gives no more than asked for, in order", () => {
    const curve = fc.array(fc.double({ min: -50, max: 120, noNaN: true }), { minLength: 1, maxLength: 300 });
    fc.assert(
      fc.property(curve, fc.integer({ min: 3, max: 60 }), (values, most) => {
        const points = values.map((value, i): [number, number] => [i, value]);
        const thin = thinCurve({ points, most });
        expect(thin.length).toBe(Math.min(most, points.length));
        expect([thin[0], thin.at(-1)]).toEqual([points[0], points.at(-1)]);
        for (const point of thin) expect(points).toContainEqual(point);
        expect(thin.map(([at]) => at)).toEqual([...thin.map(([at]) => at)].sort((a, b) => a - b));
      }),
      { numRuns: 50 },
    );
  });
});
