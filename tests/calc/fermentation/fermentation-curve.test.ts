import { describe, expect, it } from "vitest";
import {
  fermentationCurve,
  type FermentationCurve,
  type FittedFermentation,
  type LoggedGravity,
} from "@/lib/calc/fermentation";
import { degreesPlato } from "@/lib/calc/units";
import { expectWithin } from "../../support/expect-within";
import { seededNoise } from "../../support/seeded-noise";

interface Course {
  readonly original: number;
  readonly final: number;
  readonly rate: number;
  readonly middle: number;
}

/** The curve as it is printed, where nothing overflows. */
const plato = ({ original, final, rate, middle }: Course, day: number): number =>
  final + ((original - final) * (1 + Math.exp(-rate * middle))) / (1 + Math.exp(rate * (day - middle)));

/** Day within 0.1 °P of the end: the same formula solved for the day. */
const doneDay = ({ original, final, rate, middle }: Course): number =>
  middle + Math.log(10 * (original - final) * (1 + Math.exp(-rate * middle)) - 1) / rate;

const log = (course: Course, days: readonly number[], sd: number, noise = (): number => 0): LoggedGravity[] =>
  days.map((day) => ({ day, plato: degreesPlato(plato(course, day) + sd * noise()), sd }));

const fit = (
  original: number,
  points: readonly LoggedGravity[],
  expected: readonly [plato: number, sd: number] | null = null,
): FermentationCurve =>
  fermentationCurve({
    originalPlato: degreesPlato(original),
    points,
    expectedFinal: expected === null ? null : { plato: degreesPlato(expected[0]), sd: expected[1] },
  });

function fitted(...a: Parameters<typeof fit>): FittedFermentation {
  const result = fit(...a);
  if (!result.ok) throw new Error(result.reason);
  return result;
}

const DAILY = [0, 1, 2, 3, 4, 5, 6, 7, 8];
const ALE: Course = { original: 12, final: 3, rate: 1.5, middle: 2 };

const COURSES: readonly (Course & { readonly what: string; readonly days: readonly number[] })[] = [
  { what: "an ale", ...ALE, days: DAILY },
  {
    what: "a lager with a lag",
    original: 11.5,
    final: 2.6,
    rate: 0.7,
    middle: 5,
    days: [1, 3, 4, 5, 6, 8, 10, 14, 18],
  },
  {
    what: "a start at full speed",
    original: 16,
    final: 3.9,
    rate: 1.2,
    middle: -0.5,
    days: [0.5, 1, 1.5, 2, 3, 4, 6, 8],
  },
  {
    what: "a beer lighter than water",
    original: 9,
    final: -0.8,
    rate: 1,
    middle: 3,
    days: DAILY.map((day) => 1.5 * day),
  },
  { what: "a strong beer", original: 27, final: 7.5, rate: 0.5, middle: 4, days: DAILY.map((day) => 2.5 * day) },
];

describe("fermentationCurve", () => {
  it.each(COURSES)("finds $what again from readings on its curve", ({ what: _, days, ...course }) => {
    const found = fitted(course.original, log(course, days, 0.05));
    expectWithin(found.finalPlato, course.final, 1e-6);
    expectWithin(found.ratePerDay, course.rate, 1e-6);
    expectWithin(found.middleDay, course.middle, 1e-5);
    expectWithin(found.doneDay, doneDay(course), 1e-5);
    expectWithin(found.chiSquared, 0, 1e-8);
  });

  it("says an ale from 12 to 3 °P at 1.5 a day around day 2 is done on day 5.025 (by hand)", () => {
    // 9 × (1 + e^−3) / 0.1 − 1 = 93.481; ln of it over 1.5 is 3.0252.
    const found = fitted(12, log(ALE, DAILY, 0.1));
    expectWithin(found.doneDay, 5.0252, 1e-4);
    // Eight readings after the start, three parameters.
    expect(found.degreesOfFreedom).toBe(5);
    // 1.2816 as tables of the normal distribution print it, to half a unit in its last digit.
    expectWithin(found.doneLow80, found.doneDay - 1.2816 * found.doneSd, 5e-5 * found.doneSd);
    expectWithin(found.doneHigh80, found.doneDay + 1.2816 * found.doneSd, 5e-5 * found.doneSd);
  });

  it("does not depend on the order of the readings, nor on one at the start, where the curve is what it is", () => {
    const points = log(ALE, DAILY, 0.1, seededNoise(7));
    const found = fitted(12, points);
    const turned = fitted(12, [...points].reverse().slice(0, -1));
    expectWithin(turned.doneDay, found.doneDay, 1e-6);
    expect(turned.degreesOfFreedom).toBe(found.degreesOfFreedom);
  });

  it("is half as sure when every reading is", () => {
    const sure = fitted(12, log(ALE, DAILY, 0.1));
    const unsure = fitted(12, log(ALE, DAILY, 0.2));
    expectWithin(unsure.finalSd, 2 * sure.finalSd, 1e-5);
    expectWithin(unsure.doneSd, 2 * sure.doneSd, 1e-5);
  });

  it("is the less sure where readings scatter more than they claim", () => {
    const points = log(ALE, DAILY, 0.2, seededNoise(3)).map((point) => ({ ...point, sd: 0.05 }));
    const found = fitted(12, points);
    const exact = fitted(12, log(ALE, DAILY, 0.05));
    expect(found.chiSquared).toBeGreaterThan(found.degreesOfFreedom);
    expect(found.doneSd).toBeGreaterThan(1.5 * exact.doneSd);
  });

  it("takes the expected end as one more reading of it", () => {
    // Ten readings long after the end fix it to sd/√10; the expected end with as much again makes it sd/√20.
    const late = Array.from({ length: 10 }, (_, i) => 40 + i);
    const points = log(ALE, [1, 1.5, 2, 2.5, 3, ...late], 0.1);
    const alone = fitted(12, points);
    const helped = fitted(12, points, [3, 0.1 / Math.sqrt(10)]);
    expectWithin(alone.finalSd, 0.1 / Math.sqrt(10), 0.001);
    expectWithin(helped.finalSd, 0.1 / Math.sqrt(20), 0.0005);
    expect(helped.degreesOfFreedom).toBe(alone.degreesOfFreedom + 1);
  });

  it("leans on the expected end while there are few readings, and on the readings later", () => {
    const early = fitted(12, log(ALE, [1, 1.5, 2], 0.1), [3.6, 0.4]);
    const late = fitted(12, log(ALE, DAILY, 0.1), [3.6, 0.4]);
    expect(Math.abs(early.finalPlato - 3.6)).toBeLessThan(0.3);
    expect(Math.abs(late.finalPlato - 3)).toBeLessThan(0.1);
    expect(early.doneSd).toBeGreaterThan(late.doneSd);
  });

  it("holds the day and the end within its 80 % in about four of five brews", () => {
    const noise = seededNoise(20261125);
    const brews = 400;
    let day = 0;
    let end = 0;
    for (let i = 0; i < brews; i += 1) {
      const found = fitted(12, log(ALE, DAILY, 0.1, noise));
      if (found.doneLow80 <= doneDay(ALE) && doneDay(ALE) <= found.doneHigh80) day += 1;
      if (Math.abs(found.finalPlato - 3) <= 1.2816 * found.finalSd) end += 1;
    }
    // Four standard deviations of a binomial of 0.8 are 0.08; widening for scatter adds up to 0.05.
    for (const share of [day / brews, end / brews]) {
      expect(share).toBeGreaterThan(0.72);
      expect(share).toBeLessThan(0.93);
    }
  });

  it("names what is missing", () => {
    expect(fit(12, [])).toEqual({ ok: false, reason: "too-few-points" });
    expect(fit(12, log(ALE, [0, 1, 2, 3], 0.1))).toEqual({ ok: false, reason: "too-few-points" });
    expect(fit(12, log(ALE, [1, 2, 2, 3], 0.1))).toEqual({ ok: false, reason: "too-few-points" });
    expect(fit(12, log(ALE, [1, 2], 0.1), [3, 0.5])).toEqual({ ok: false, reason: "too-few-points" });
    expect(fit(12, log(ALE, [1, 2, 3, 4], 0.1)).ok).toBe(true);
    expect(fit(12, log(ALE, [1, 2, 3], 0.1), [3, 0.5]).ok).toBe(true);
  });

  it("sees no fermentation in a wort that stands still, nor in one fall within three standard uncertainties", () => {
    const still = [1, 2, 3, 4, 5].map((day) => ({ day, plato: degreesPlato(12), sd: 0.1 }));
    expect(fit(12, still)).toEqual({ ok: false, reason: "no-decline" });
    const lower = [...still, { day: 6, plato: degreesPlato(11.71), sd: 0.1 }];
    expect(fit(12, lower)).toEqual({ ok: false, reason: "no-decline" });
  });

  it("does not guess an end from a fall that is still at full speed", () => {
    const straight = [1, 2, 3, 4].map((day) => ({ day, plato: degreesPlato(20 - 1.5 * day), sd: 0.05 }));
    expect(fit(20, straight)).toEqual({ ok: false, reason: "not-converged" });
    const helped = fit(20, straight, [5, 0.5]);
    expect(helped.ok).toBe(true);
  });

  it("sees no end where the curve heads for less than nothing, or has hardly left the start", () => {
    // Wort of 20 °P cannot read below −4.41 °P.
    const below = { original: 20, final: -6, rate: 0.6, middle: 5 };
    expect(fit(20, log(below, [1, 2, 3, 4, 5, 6], 0.01))).toEqual({ ok: false, reason: "end-not-in-sight" });
    const hardly = { original: 12, final: 11.95, rate: 1, middle: 2 };
    expect(fit(12, log(hardly, DAILY, 0.005))).toEqual({ ok: false, reason: "end-not-in-sight" });
  });

  it("always ends, with finite numbers or a reason, whatever was logged", () => {
    const noise = seededNoise(99);
    for (let i = 0; i < 200; i += 1) {
      const points = Array.from({ length: 4 + (i % 6) }, () => ({
        day: Math.abs(3 * noise()),
        plato: degreesPlato(Math.min(30, Math.max(-5, 6 + 4 * noise()))),
        sd: 0.1,
      }));
      const result = fit(12, points, i % 2 === 0 ? null : [3, 0.5]);
      if (!result.ok) continue;
      const { ok: _, ...numbers } = result;
      for (const value of Object.values(numbers)) expect(Number.isFinite(value)).toBe(true);
    }
  });

  it("refuses what was never logged", () => {
    const point = { day: 1, plato: degreesPlato(10), sd: 0.1 };
    const refused = (change: Partial<Record<"day" | "plato" | "sd", number>>): (() => unknown) => {
      const wrong = { ...point, ...change } as LoggedGravity;
      return () => fit(12, [wrong]);
    };
    expect(refused({ day: -1 })).toThrow("day of the reading -1 d is outside 0 to 180 d");
    expect(refused({ day: 181 })).toThrow("day of the reading 181 d is outside 0 to 180 d");
    expect(refused({ plato: 36 })).toThrow("logged gravity 36 °P is outside -9 to 35 °P");
    expect(refused({ sd: 0 })).toThrow("uncertainty of the reading 0 °P is outside 0.005 to 2 °P");
    expect(refused({ sd: NaN })).toThrow("uncertainty of the reading NaN °P");
    expect(() => fit(0.9, [])).toThrow("original extract 0.9 °P is outside 1 to 35 °P");
    expect(() => fit(12, [], [12.1, 0.5])).toThrow("expected final extract 12.1 °P is outside");
    expect(() => fit(12, [], [3, 2.1])).toThrow("uncertainty of the expected extract 2.1 °P is outside 0.005 to 2 °P");
  });
});
