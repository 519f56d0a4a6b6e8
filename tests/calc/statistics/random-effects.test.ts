import { describe, expect, it } from "vitest";
import { randomEffects } from "@/lib/calc/statistics";
import { BCG_TRIALS } from "../../reference/bcg-vaccine";
import { EIGHT_SCHOOLS } from "../../reference/eight-schools";
import { expectPrinted } from "../../support/expect-printed";
import { expectWithin } from "../../support/expect-within";

/** Log risk ratios and their errors. */
const TRIALS = BCG_TRIALS.map(([ill, well, otherIll, otherWell]) => ({
  estimate: Math.log(ill / (ill + well) / (otherIll / (otherIll + otherWell))),
  standardError: Math.sqrt(1 / ill - 1 / (ill + well) + 1 / otherIll - 1 / (otherIll + otherWell)),
}));

const PAIR = [
  { estimate: 1, standardError: 1 },
  { estimate: 5, standardError: 1 },
];

describe("randomEffects", () => {
  it("meets the published figures of thirteen trials by moments (dat.bcg, DerSimonian and Laird)", () => {
    const result = randomEffects({ units: TRIALS, method: "dersimonian-laird" });
    expectPrinted(result.betweenVariance, "0.3088");
    expectPrinted(result.mean, "-0.7141");
    expectPrinted(result.standardError, "0.1787");
    expectPrinted(result.q, "152.2330");
    expect(result.df).toBe(12);
    expect(result.p).toBeLessThan(1e-4);
  });

  it("meets the published figures of the same trials by restricted likelihood (dat.bcg, REML)", () => {
    const result = randomEffects({ units: TRIALS, method: "reml" });
    expectPrinted(result.betweenVariance, "0.3132");
    expectPrinted(result.mean, "-0.7145");
    expectPrinted(result.standardError, "0.1798");
    expectPrinted(result.q, "152.2330");
  });

  it.each(["dersimonian-laird", "reml"] as const)(
    "is the plain variance of two equally sure units by %s, by hand",
    (method) => {
      // Mean 3, variance of the estimates 8, less 1 for their errors: 7; error of the mean √(8/2); Q = 8 on 1.
      const result = randomEffects({ units: PAIR, method });
      expectWithin(result.betweenVariance, 7, 1e-9);
      expectWithin(result.mean, 3, 1e-12);
      expectWithin(result.standardError, 2, 1e-9);
      expectWithin(result.q, 8, 1e-12);
      expectPrinted(result.p, "0.00468");
    },
  );

  it.each(["dersimonian-laird", "reml"] as const)(
    "finds no variance between eight schools by %s: weights only",
    (method) => {
      // Inverse squares of the errors add up to 0.060313 and give the mean 7.6856, error 4.0719; Q 4.7071 is below 7.
      const result = randomEffects({ units: EIGHT_SCHOOLS, method });
      expect(result.betweenVariance).toBe(0);
      expectPrinted(result.mean, "7.6856");
      expectPrinted(result.standardError, "4.0719");
      expectPrinted(result.q, "4.7071");
    },
  );

  it("gives one answer for units that agree", () => {
    const same = PAIR.map((unit) => ({ ...unit, estimate: 2 }));
    expect(randomEffects({ units: same, method: "reml" })).toMatchObject({ mean: 2, betweenVariance: 0, q: 0, p: 1 });
  });

  it("keeps the moments where one unit is a million million times surer than two others, by hand", () => {
    // Weights 1e18, 1 and 1: the mean is the first estimate, Q = 9 + 16 = 25 on 2, and Σ w − Σ w²/Σ w = 4 + 2e−18 …, of which
    // 1e18 − 1e36/(1e18 + 2) would leave nothing: variance 23/4.
    const units = [
      { estimate: 0, standardError: 1e-9 },
      { estimate: 3, standardError: 1 },
      { estimate: -4, standardError: 1 },
    ];
    const result = randomEffects({ units, method: "dersimonian-laird" });
    expectWithin(result.q, 25, 1e-9);
    expectWithin(result.betweenVariance, 23 / 4, 1e-9);
  });

  it("refuses one unit and figures past their ends", () => {
    const call = (units: typeof PAIR): unknown => randomEffects({ units, method: "reml" });
    expect(() => call(PAIR.slice(1))).toThrow("number of units 1 is outside 2 to 500");
    expect(() => call([...PAIR, { estimate: NaN, standardError: 1 }])).toThrow("estimate NaN is outside");
    expect(() => call([...PAIR, { estimate: 1, standardError: -1 }])).toThrow("standard error -1 is outside 1e-9");
  });
});
