import { describe, expect, it } from "vitest";
import { changePoint, changesByOrder, type PooledUnit } from "@/lib/calc/statistics";
import { seededNoise } from "../../support/seeded-noise";

const sure = (...estimates: readonly number[]): PooledUnit[] =>
  estimates.map((estimate) => ({ estimate, standardError: 1 }));

/** By hand: how many arrangements have a step as clear as the one that was, of how many. */
const ARRANGEMENTS = [
  { what: "two and two", values: [0, 0, 1, 1], as: 2, of: 6 },
  { what: "three and three", values: [0, 0, 0, 1, 1, 1], as: 2, of: 20 },
  { what: "two and four", values: [0, 0, 1, 1, 1, 1], as: 2, of: 15 },
  // The clearest step is 2, in the middle, of all orders with 1 and 2 in one half: 2 · 2! · 2! of 4!.
  { what: "one, two, three, four", values: [1, 2, 3, 4], as: 8, of: 24 },
  { what: "all alike", values: [5, 5, 5, 5], as: 1, of: 1 },
];

describe("changesByOrder", () => {
  it.each(ARRANGEMENTS)("counts $as of $of arrangements for $what", ({ values, as, of }) => {
    expect(changesByOrder([sure(...values)])[0]).toBeCloseTo(as / of, 12);
  });

  it("asks for any of the sequences: a copy adds no chance, and one that never varies none", () => {
    const step = sure(0, 0, 0, 1, 1, 1);
    expect(changesByOrder([step, step, step])).toEqual([0.1, 0.1, 0.1]);
    expect(changesByOrder([step, sure(2, 2, 2, 2, 2, 2)])).toEqual([0.1, 1]);
  });

  it("lets a clear step of one sequence raise no other", () => {
    const [clear = 1, faint = 0] = changesByOrder([sure(0, 0, 0, 9, 9, 9), sure(0.2, 0, 0.1, 0, 0.2, 0.1)]);
    expect(clear).toBeCloseTo(0.1, 12);
    expect(faint).toBeGreaterThan(clear);
  });

  it("leaves out what an occasion does not tell", () => {
    const gap = [...sure(0, 0, 0), null, ...sure(1, 1, 1)];
    // 7! / (3! 3!) arrangements of zeros, ones and one gap; the gap may stand at any of seven places in each of two.
    expect(changesByOrder([gap])[0]).toBeCloseTo((2 * 7) / 140, 12);
    expect(changesByOrder([[null, null, ...sure(1)]])).toEqual([1]);
  });

  it("finds 2 of 924 arrangements among twelve, where orders are drawn, and the same each time", () => {
    const step = sure(0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 1, 1);
    const [p = 1] = changesByOrder([step]);
    // The order that was is one of the 2000; three binomial errors.
    const exact = 2 / 924;
    expect(Math.abs(p - exact)).toBeLessThan(1 / 2000 + 3 * Math.sqrt(exact / 2000));
    expect(changesByOrder([step])).toEqual([p]);
  });

  it("keeps its level where one reading in ten is wrong, which a test by stated errors does not", () => {
    const noise = seededNoise(39);
    const sequences = Array.from({ length: 300 }, () =>
      sure(...Array.from({ length: 8 }, () => noise() * (noise() > 1.2816 ? 8 : 1))),
    );
    const share = (p: (values: readonly PooledUnit[]) => number): number =>
      sequences.filter((values) => p(values) <= 0.05).length / sequences.length;
    const byOrder = share((values) => changesByOrder([values])[0] ?? 1);
    const byErrors = share((values) => {
      const change = changePoint(values);
      return change.ok ? change.p : 1;
    });
    // 0.05 and three binomial errors of 300.
    expect(byOrder).toBeLessThanOrEqual(0.05 + 3 * Math.sqrt((0.05 * 0.95) / 300));
    expect(byErrors).toBeGreaterThan(0.2);
  });

  it("refuses sequences of different lengths, and none at all", () => {
    expect(() => changesByOrder([sure(1, 2, 3), sure(1, 2)])).toThrow("number of values 2 is outside 3 to 3");
    expect(() => changesByOrder([])).toThrow("number of sequences 0 is outside 1 to 40");
  });
});
