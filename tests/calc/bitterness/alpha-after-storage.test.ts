import { describe, expect, it } from "vitest";
import { alphaAfterStorage } from "@/lib/calc/bitterness";
import { celsius, days, fraction } from "@/lib/calc/units";
import { expectWithin } from "../../support/expect-within";

const stored = (loss: number, time: number, degrees: number, factor: number): number =>
  alphaAfterStorage({
    alphaFraction: fraction(0.1),
    lossIn6Months: fraction(loss),
    days: days(time),
    celsius: celsius(degrees),
    storageFactor: fraction(factor),
  });

describe("alphaAfterStorage", () => {
  it("leaves 7 of 10 % after half a year in the open at 20 °C when the variety loses 30 % (definition)", () => {
    expectWithin(100 * stored(0.3, 180, 20, 1), 7, 0.01);
  });

  it("leaves 8.346 of 10 % after a year at 5 °C behind a barrier (0.001982 × 0.5 × 0.5 × 365 by hand; factor from memory)", () => {
    expectWithin(100 * stored(0.3, 365, 5, 0.5), 8.346, 0.02);
  });

  it("loses at a rate of 0.001982 a day when 30 % go in 180 days (Garetz 1994)", () => {
    expectWithin(-Math.log(stored(0.3, 1, 20, 1) / 0.1), 0.001982, 2e-6);
  });

  it("halves the rate for every 15 K colder (Garetz 1994)", () => {
    expectWithin(stored(0.3, 200, 5, 1), stored(0.3, 100, 20, 1), 1e-12);
  });

  it("leaves fresh hops and hops without a loss as they are", () => {
    expect(stored(0.3, 0, 20, 1)).toBe(0.1);
    expect(stored(0, 1000, 20, 1)).toBe(0.1);
  });

  it("refuses a warm attic and a variety that loses everything", () => {
    expect(() => stored(0.3, 180, 41, 1)).toThrow("storage temperature 41 °C is outside -30 to 40 °C");
    expect(() => stored(1, 180, 20, 1)).toThrow("loss in six months 1 is outside 0 to 0.95");
  });
});
