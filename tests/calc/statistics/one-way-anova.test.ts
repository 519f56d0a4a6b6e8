import { describe, expect, it } from "vitest";
import { oneWayAnova, studentTUpperTail } from "@/lib/calc/statistics";
import { ATM_WT_AG, SI_RSTV, smallLeastSquares } from "../../reference/nist-strd";
import { expectDigits } from "../../support/expect-digits";
import { expectWithin } from "../../support/expect-within";

/**
 * The generated sets: 8 means at ±0.1 about one, so 0.08 between for each value of a group, and 0.01 within for each but
 * one. From seven constant leading digits on, the digits are those that doubles keep of the data: 9, then 3.
 */
const GENERATED = [
  { name: "SmLs01", constant: 1, perGroup: 21, f: 21, digits: 13 },
  { name: "SmLs02", constant: 1, perGroup: 201, f: 201, digits: 13 },
  { name: "SmLs03", constant: 1, perGroup: 2001, f: 2001, digits: 13 },
  { name: "SmLs04", constant: 1_000_000, perGroup: 21, f: 21, digits: 9 },
  { name: "SmLs05", constant: 1_000_000, perGroup: 201, f: 201, digits: 9 },
  { name: "SmLs06", constant: 1_000_000, perGroup: 2001, f: 2001, digits: 9 },
  { name: "SmLs07", constant: 1e12, perGroup: 21, f: 21, digits: 4 },
  { name: "SmLs08", constant: 1e12, perGroup: 201, f: 201, digits: 4 },
  { name: "SmLs09", constant: 1e12, perGroup: 2001, f: 2001, digits: 4 },
];

describe("oneWayAnova", () => {
  it("meets the certified table of SiRstv to twelve digits (NIST StRD)", () => {
    const table = oneWayAnova(SI_RSTV);
    expect(table).toMatchObject({ betweenDf: 4, withinDf: 20 });
    expectDigits(table.betweenSs, 5.11462616e-2, 9);
    expectDigits(table.withinSs, 2.1663656e-1, 9);
    expectDigits(table.f, 1.18046237440255, 11);
    expectDigits(table.rSquared, 1.90999039051129e-1, 11);
    expectDigits(table.residualSd, 1.04076068334656e-1, 12);
  });

  it("meets the certified table of AtmWtAg, seven constant leading digits, to nine digits (NIST StRD)", () => {
    const table = oneWayAnova(ATM_WT_AG);
    expect(table).toMatchObject({ betweenDf: 1, withinDf: 46 });
    expectDigits(table.betweenSs, 3.638341875e-9, 9);
    expectDigits(table.withinSs, 1.04951729166667e-8, 9);
    expectDigits(table.f, 15.946733567793, 9);
    expectDigits(table.rSquared, 2.57426544538321e-1, 9);
    expectDigits(table.residualSd, 1.5104831444641e-5, 9);
  });

  it.each(GENERATED)("meets the certified ratio $f of $name to $digits digits (NIST StRD)", (row) => {
    const table = oneWayAnova(smallLeastSquares(row.constant, row.perGroup));
    expectDigits(table.f, row.f, row.digits);
    expectDigits(table.betweenSs, 0.08 * row.perGroup, row.digits);
    expectDigits(table.withinSs, 0.09 * (row.perGroup - 1), row.digits);
    expectDigits(table.residualSd, 0.1, row.digits);
    expect(table.withinDf).toBe(9 * (row.perGroup - 1));
  });

  it("is the square of Student's t with two groups (identity)", () => {
    // Means 2 and 3, pooled variance 1: t = 1/√(2/3), so F = 3/2 on 1 and 4 degrees of freedom.
    const table = oneWayAnova([
      [1, 2, 3],
      [2, 3, 4],
    ]);
    expectWithin(table.f, 1.5, 1e-14);
    expectWithin(table.p, 2 * studentTUpperTail({ t: Math.sqrt(1.5), df: 4 }), 1e-12);
    expectWithin(table.rSquared, 1.5 / 5.5, 1e-15);
  });

  it("takes groups of unequal size: 1 2 3 against 7 and 6 8 by hand", () => {
    // Grand mean 27/6 = 4.5, group means 2, 7, 7: between 3·6.25 + 6.25 + 2·6.25 = 37.5, within 2 + 0 + 2 = 4 on 3.
    const table = oneWayAnova([[1, 2, 3], [7], [6, 8]]);
    expectWithin(table.betweenSs, 37.5, 1e-13);
    expectWithin(table.withinSs, 4, 1e-13);
    expectWithin(table.f, 37.5 / 2 / (4 / 3), 1e-12);
    expect(table).toMatchObject({ betweenDf: 2, withinDf: 3 });
  });

  it("finds nothing between groups that agree", () => {
    const table = oneWayAnova([
      [1, 3],
      [1, 3],
    ]);
    expect(table).toMatchObject({ f: 0, p: 1, rSquared: 0, betweenSs: 0, withinSs: 4 });
  });

  it("refuses one group, an empty group, single values and groups without scatter", () => {
    expect(() => oneWayAnova([[1, 2]])).toThrow("number of groups 1 is outside 2 to 10000");
    expect(() => oneWayAnova([[1, 2], []])).toThrow("number of values 0 is outside 1 to 100000");
    expect(() => oneWayAnova([[1], [2]])).toThrow("degrees of freedom within 0 is outside 1 to 1000000");
    expect(() => oneWayAnova([[1, NaN], [2]])).toThrow("value NaN is outside -1e+50 to 1e+50");
    expect(() => oneWayAnova([[1, 1], [2]])).toThrow("sum of squares within groups 0 is outside");
    expect(() => oneWayAnova([[1, 1], [1]])).toThrow("sum of squares within groups 0 is outside");
  });
});
