import { describe, expect, it } from "vitest";
import { fermentationCurve, platoOnDay } from "@/lib/calc/fermentation";
import { curveAt, dayWithin, type CurveParameters } from "@/lib/calc/fermentation/attenuation-curve";
import { degreesPlato } from "@/lib/calc/units";
import { expectWithin } from "../../support/expect-within";

describe("the curve behind it", () => {
  const parameters: CurveParameters = [3, Math.log(1.5), 2];
  const nudged = (index: number, by: number): CurveParameters => {
    const changed = [...parameters] as [number, number, number];
    changed[index] = (changed[index] ?? 0) + by;
    return changed;
  };

  it.each([0, 1, 2])("moves with parameter %i as differences say", (index) => {
    const step = 1e-5;
    for (const day of [0, 1, 2.5, 6]) {
      const by =
        (curveAt(day, 12, nudged(index, step)).plato - curveAt(day, 12, nudged(index, -step)).plato) / (2 * step);
      expectWithin(curveAt(day, 12, parameters).slopes[index] ?? NaN, by, 1e-7);
    }
    const day =
      (dayWithin(0.1, 12, nudged(index, step)).day - dayWithin(0.1, 12, nudged(index, -step)).day) / (2 * step);
    expectWithin(dayWithin(0.1, 12, parameters).slopes[index] ?? NaN, day, 1e-7);
  });

  it("does not overflow where rate times middle is large", () => {
    expectWithin(curveAt(1, 12, [3, Math.log(30), 200]).plato, 12, 1e-9);
    // With the middle long before the start it is an exponential: 3 + 9 e^(−0.5 × 3).
    expectWithin(curveAt(3, 12, [3, Math.log(0.5), -60]).plato, 3 + 9 * Math.exp(-1.5), 1e-9);
  });
});

describe("platoOnDay", () => {
  const on = (day: number, change: Partial<Record<keyof Parameters<typeof platoOnDay>[0], number>> = {}): number =>
    platoOnDay({ originalPlato: 12, finalPlato: 3, ratePerDay: 1.5, middleDay: 2, day, ...change } as never);

  it("is 7.724 °P in the middle of a fall from 12 to 3 °P: 3 + 9 × 1.04979 / 2 (by hand)", () => {
    expectWithin(on(2), 7.72404, 1e-5);
  });

  it("starts at the original extract and ends at the final one", () => {
    expectWithin(on(0), 12, 1e-12);
    expectWithin(on(180), 3, 1e-12);
  });

  it("draws what was fitted", () => {
    const points = [1, 2, 3, 4, 5, 6].map((day) => ({ day, plato: degreesPlato(on(day)), sd: 0.1 }));
    const found = fermentationCurve({ originalPlato: degreesPlato(12), points, expectedFinal: null });
    if (!found.ok) throw new Error(found.reason);
    const { finalPlato, ratePerDay, middleDay, doneDay } = found;
    expectWithin(on(doneDay, { finalPlato, ratePerDay, middleDay }), finalPlato + 0.1, 1e-9);
  });

  it("refuses a course that no fermentation takes", () => {
    expect(() => on(181)).toThrow("day 181 d is outside 0 to 180 d");
    expect(() => on(1, { ratePerDay: 0.01 })).toThrow("rate 0.01 1/d is outside 0.02 to 30 1/d");
    expect(() => on(1, { middleDay: 201 })).toThrow("middle 201 d is outside -30 to 200 d");
    expect(() => on(1, { finalPlato: 13 })).toThrow("final extract 13 °P is outside");
    expect(() => on(1, { originalPlato: 36 })).toThrow("original extract 36 °P is outside 1 to 35 °P");
  });
});
