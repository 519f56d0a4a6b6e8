import { describe, expect, it } from "vitest";
import { findRoot } from "@/lib/calc/numerics";
import { expectWithin } from "../../support/expect-within";

const KNOWN_ROOTS = [
  { name: "x² = 2", f: (x: number) => x * x - 2, low: 0, high: 2, root: Math.SQRT2, source: "definition" },
  { name: "cos x = 0", f: Math.cos, low: 1, high: 2, root: Math.PI / 2, source: "definition" },
  {
    name: "x³ − 2x − 5 = 0",
    f: (x: number) => x ** 3 - 2 * x - 5,
    low: 2,
    high: 3,
    root: 2.0945514815423265,
    source: "Wallis's example, solved by Newton 1669",
  },
  {
    name: "cos x = x",
    f: (x: number) => Math.cos(x) - x,
    low: 0,
    high: 1,
    root: 0.7390851332151607,
    source: "Dottie number, OEIS A003957",
  },
  {
    name: "x eˣ = 1",
    f: (x: number) => x * Math.exp(x) - 1,
    low: 0,
    high: 1,
    root: 0.5671432904097838,
    source: "omega constant, OEIS A030178",
  },
];

describe("findRoot", () => {
  it.each(KNOWN_ROOTS)("finds the root of $name ($source)", ({ f, low, high, root }) => {
    const found = findRoot({ f, low, high, tolerance: 1e-13 });
    expect(found.ok).toBe(true);
    expectWithin(found.x, root, 2e-13);
    expect(found.evaluations).toBeLessThan(20);
  });

  it("keeps a flat triple root within the tolerance", () => {
    const found = findRoot({ f: (x) => (x - 0.3) ** 3, low: -1, high: 2, tolerance: 1e-6 });
    expect(found.ok).toBe(true);
    expectWithin(found.x, 0.3, 1e-6);
  });

  it("finds the jump of a function that is not continuous", () => {
    const found = findRoot({ f: (x) => (x < 0.7 ? -1 : 1), low: 0, high: 1, tolerance: 1e-9 });
    expect(found.ok).toBe(true);
    expectWithin(found.x, 0.7, 1e-9);
  });

  it("takes a root at either end", () => {
    expect(findRoot({ f: (x) => x, low: 0, high: 1, tolerance: 0 })).toMatchObject({ ok: true, x: 0 });
    expect(findRoot({ f: (x) => x - 1, low: 0, high: 1, tolerance: 0 })).toMatchObject({ ok: true, x: 1 });
  });

  it("says when the ends do not bracket a root", () => {
    expect(findRoot({ f: (x) => x * x + 1, low: -1, high: 2, tolerance: 1e-9 })).toMatchObject({
      ok: false,
      reason: "not-bracketed",
      x: -1,
    });
    expect(findRoot({ f: () => NaN, low: 0, high: 1, tolerance: 1e-9 })).toMatchObject({ reason: "not-bracketed" });
  });

  it("says when a value on the way is not a number", () => {
    const holed = (x: number): number => (x === 0 || x === 1 ? x - 0.5 : NaN);
    expect(findRoot({ f: holed, low: 0, high: 1, tolerance: 1e-9 })).toMatchObject({
      ok: false,
      reason: "did-not-converge",
    });
  });

  it("refuses ends out of order, an infinite end and a negative tolerance", () => {
    const f = (x: number): number => x;
    expect(() => findRoot({ f, low: 2, high: 1, tolerance: 0 })).toThrow("high end 1 is outside 2 to 1e+300");
    expect(() => findRoot({ f, low: -Infinity, high: 1, tolerance: 0 })).toThrow("low end -Infinity is outside");
    expect(() => findRoot({ f, low: 0, high: 1, tolerance: -1 })).toThrow("tolerance -1 is outside 0 to 1000000");
  });
});
