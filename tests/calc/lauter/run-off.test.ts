import { describe, expect, it } from "vitest";
import { runOff, type Sparge } from "@/lib/calc/lauter";
import { fraction, kilograms, litres } from "@/lib/calc/units";
import { expectWithin } from "../../support/expect-within";

interface Case {
  readonly water: number;
  readonly grist: number;
  readonly extractAsIs: number;
  readonly absorption: number;
  readonly sparge: number;
  readonly method: Sparge;
  readonly bypass: number;
}

const PLAIN: Case = { water: 25, grist: 5, extractAsIs: 0.8, absorption: 1, sparge: 0, method: "none", bypass: 0 };

function drain(changes: Partial<Case>): ReturnType<typeof runOff> {
  const a = { ...PLAIN, ...changes };
  return runOff({
    wort: kilograms(a.water + a.grist * a.extractAsIs),
    extract: kilograms(a.grist * a.extractAsIs),
    retained: litres(a.grist * a.absorption),
    sparge: kilograms(a.sparge),
    method: a.method,
    bypass: fraction(a.bypass),
  });
}

function efficiency(changes: Partial<Case>): number {
  const drained = drain(changes);
  if (!drained.ok) throw new Error(drained.reason);
  return drained.efficiency;
}

/** Worked from V = (W + E)/(SG · 0.9982) and perfect mixing, retained volume absorption × grist. */
const ROWS: readonly (Partial<Case> & { expected: number; tolerance: number })[] = [
  { water: 30, grist: 5, absorption: 1, extractAsIs: 0.8, expected: 0.8462, tolerance: 0.003 },
  { water: 25, grist: 6, absorption: 0.8, extractAsIs: 0.78, expected: 0.8282, tolerance: 0.003 },
  { water: 15, sparge: 15, grist: 5, method: "batch", expected: 0.9287, tolerance: 0.004 },
  { water: 18, sparge: 12, grist: 5, method: "batch", expected: 0.9284, tolerance: 0.004 },
];

describe("runOff", () => {
  it.each(ROWS)("gives the worked lauter efficiency $expected", ({ expected, tolerance, ...changes }) => {
    expectWithin(efficiency(changes), expected, tolerance);
  });

  it("loses neither mass nor extract", () => {
    for (const method of ["none", "batch", "continuous", "pour-over"] as const) {
      const drained = drain({ sparge: method === "none" ? 0 : 10, method, bypass: 0.2 });
      if (!drained.ok) throw new Error(drained.reason);
      expectWithin(drained.kg + drained.retainedKg, 25 + 4 + (method === "none" ? 0 : 10), 1e-12);
      expectWithin(drained.extractKg + drained.retainedExtractKg, 4, 1e-12);
    }
  });

  it("washes out continuously as ever smaller batches would (limit of n perfectly mixed batches)", () => {
    const sparge = 10;
    const batches = 2000;
    let held = 1;
    for (let i = 0; i < batches; i++) held *= 5 / (5 + sparge / batches / 0.998204);
    const none = 1 - efficiency({});
    // The stages change the density of what is held a little; the closed form has water's.
    expectWithin(1 - efficiency({ sparge, method: "continuous" }), none * held, 0.001 * none);
  });

  it("washes nothing with water that all runs past the grain", () => {
    expectWithin(efficiency({ sparge: 10, method: "pour-over", bypass: 1 }), efficiency({}), 1e-12);
  });

  it("falls when more grain is put into the same water", () => {
    const falling = [3, 4, 5, 6, 7, 8].map((grist) => efficiency({ grist }));
    expect(falling).toEqual([...falling].sort((a, b) => b - a));
  });

  it("says when the grain holds all the wort", () => {
    expect(drain({ water: 4, grist: 8, absorption: 1.4 })).toMatchObject({
      ok: false,
      reason: "grain-holds-all-water",
    });
  });
});
