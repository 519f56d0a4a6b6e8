import { describe, expect, it } from "vitest";
import { normalCdf, studentTQuantile, studentTUpperTail } from "@/lib/calc/statistics";
import { T_LEVELS, T_ROWS } from "../../reference/critical-values";
import { expectPrinted } from "../../support/expect-printed";
import { expectWithin } from "../../support/expect-within";

const CELLS = T_ROWS.flatMap(([df, ...values]) =>
  values.map((printed, i) => ({ df, above: T_LEVELS[i] ?? NaN, printed: printed })),
);

describe("studentTUpperTail", () => {
  it("is Cauchy's tail with one degree of freedom (closed form)", () => {
    for (const t of [0, 0.5, 1, 12.7, 1e4])
      expectWithin(studentTUpperTail({ t, df: 1 }), 0.5 - Math.atan(t) / Math.PI, 1e-12);
    // 0.5 − atan(t)/π loses its digits here; atan(1/t)/π does not.
    expectWithin(studentTUpperTail({ t: 1e9, df: 1 }) / (Math.atan(1e-9) / Math.PI), 1, 1e-12);
  });

  it("is (1 − t / √(2 + t²)) / 2 with two degrees of freedom (closed form)", () => {
    for (const t of [-3, -0.1, 0, 0.1, 1, 4.303])
      expectWithin(studentTUpperTail({ t, df: 2 }), (1 - t / Math.sqrt(2 + t * t)) / 2, 1e-12);
  });

  it("comes to the normal tail with many degrees of freedom (limit)", () => {
    for (const t of [-2, 0.5, 1, 3]) expectWithin(studentTUpperTail({ t, df: 1e6 }), normalCdf(-t), 1e-6);
  });

  it("is one half at 0 and mirrored about it", () => {
    expect(studentTUpperTail({ t: 0, df: 7.3 })).toBe(0.5);
    expectWithin(studentTUpperTail({ t: -1.2, df: 7.3 }) + studentTUpperTail({ t: 1.2, df: 7.3 }), 1, 1e-12);
  });

  it("refuses values and degrees of freedom past their ends", () => {
    expect(() => studentTUpperTail({ t: NaN, df: 5 })).toThrow(
      "t NaN is outside -1000000000000000 to 1000000000000000",
    );
    expect(() => studentTUpperTail({ t: 1, df: 0.49 })).toThrow("degrees of freedom 0.49 is outside 0.5 to 1000000");
    expect(() => studentTUpperTail({ t: 1, df: 1_000_001 })).toThrow("degrees of freedom 1000001 is outside");
    expect(studentTUpperTail({ t: 1, df: 0.5 })).toBeLessThan(0.5);
  });
});

describe("studentTQuantile", () => {
  it.each(CELLS)("leaves $above above $printed with $df degrees of freedom (NIST e-Handbook 1.3.6.7.2)", (cell) => {
    expectPrinted(studentTQuantile({ p: 1 - cell.above, df: cell.df }), cell.printed);
    expectPrinted(-studentTQuantile({ p: cell.above, df: cell.df }), cell.printed);
  });

  it("is Cauchy's quantile with one degree of freedom, 1/tan of a share of π (closed form)", () => {
    for (const above of [1e-12, 1e-6, 0.001, 0.1, 0.4])
      expectWithin(studentTQuantile({ p: above, df: 1 }) * Math.tan(above * Math.PI), -1, 1e-12);
  });

  it("is undone by the tail (round trip), for broken degrees of freedom too", () => {
    for (const df of [1, 2.5, 9, 16.7, 1e4])
      for (const above of [1e-12, 1e-5, 0.02, 0.3, 0.49])
        expectWithin(studentTUpperTail({ t: -studentTQuantile({ p: above, df }), df }) / above, 1, 1e-11);
  });

  it("is 0 in the middle", () => {
    expect(studentTQuantile({ p: 0.5, df: 3 })).toBe(0);
  });

  it("refuses probabilities and degrees of freedom past their ends", () => {
    expect(() => studentTQuantile({ p: 0, df: 3 })).toThrow("probability 0 is outside 1e-12 to 0.999999999999");
    expect(() => studentTQuantile({ p: 1, df: 3 })).toThrow("probability 1 is outside");
    expect(() => studentTQuantile({ p: 0.9, df: 0.99 })).toThrow("degrees of freedom 0.99 is outside 1 to 1000000");
    expect(() => studentTQuantile({ p: NaN, df: 3 })).toThrow("probability NaN");
  });
});
