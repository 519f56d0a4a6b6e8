import { describe, expect, it } from "vitest";
import { dayOfShare, platoOnDay } from "@/lib/calc/fermentation";
import { degreesPlato } from "@/lib/calc/units";
import { expectWithin } from "../../support/expect-within";

const COURSES = [
  { ratePerDay: 1.5, middleDay: 2 },
  { ratePerDay: 0.5, middleDay: -20 },
  { ratePerDay: 8, middleDay: 6 },
  { ratePerDay: 0.05, middleDay: 10 },
];

describe("dayOfShare", () => {
  it("is 3.5007 days for nine tenths of a fall of 1.5 a day with its middle on day 2 (by hand)", () => {
    // (1 + e^−3) / 0.1 = 10.49787; ln(9.49787) = 2.25107; 2 + 2.25107 / 1.5 = 3.50071.
    expectWithin(dayOfShare({ ratePerDay: 1.5, middleDay: 2, share: 0.9 }), 3.50071, 1e-5);
  });

  it("is ln 2 half-lives where the middle lies long before the start: a plain exponential", () => {
    expectWithin(dayOfShare({ ratePerDay: 2, middleDay: -30, share: 0.5 }), Math.LN2 / 2, 1e-12);
  });

  it.each(COURSES)("names the day on which the curve is there: $ratePerDay a day, middle $middleDay", (course) => {
    for (const share of [0.1, 0.5, 0.75, 0.9]) {
      const day = dayOfShare({ ...course, share });
      const plato = platoOnDay({ ...course, originalPlato: degreesPlato(12), finalPlato: degreesPlato(3), day });
      expectWithin(plato, 12 - 9 * share, 1e-9);
    }
  });

  it("begins on day 0 and comes later for a larger share", () => {
    for (const course of COURSES) {
      expectWithin(dayOfShare({ ...course, share: 0 }), 0, 1e-9);
      const days = [0.2, 0.4, 0.6, 0.8, 0.999].map((share) => dayOfShare({ ...course, share }));
      expect(days).toEqual(days.toSorted((a, b) => a - b));
    }
  });

  it("refuses the end itself, and a course that no fermentation takes", () => {
    const of = (change: object): number => dayOfShare({ ratePerDay: 1.5, middleDay: 2, share: 0.9, ...change });
    expect(() => of({ share: 1 })).toThrow("share of the fall 1 is outside 0 to 0.999");
    expect(() => of({ ratePerDay: 31 })).toThrow("rate 31 1/d is outside 0.02 to 30 1/d");
    expect(() => of({ middleDay: -31 })).toThrow("middle -31 d is outside -30 to 200 d");
  });
});
