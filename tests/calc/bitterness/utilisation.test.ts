import { describe, expect, it } from "vitest";
import { ragerIbu, ragerUtilisation, tinsethIbu, tinsethUtilisation } from "@/lib/calc/bitterness";
import { fraction, grams, litres, minutes, specificGravity } from "@/lib/calc/units";
import { RAGER_FIT, RAGER_STEPS, TINSETH_TABLE } from "../../reference/utilisation";
import { expectWithin } from "../../support/expect-within";

const utilisation = (sg: number, time: number): number =>
  tinsethUtilisation({ sg: specificGravity(sg), minutes: minutes(time) });

const addition = (
  hops: number,
  alpha: number,
  volume: number,
  sg: number,
  time: number,
): Parameters<typeof tinsethIbu>[0] => ({
  grams: grams(hops),
  alphaFraction: fraction(alpha),
  litres: litres(volume),
  sg: specificGravity(sg),
  minutes: minutes(time),
});

describe("tinsethUtilisation", () => {
  it.each(TINSETH_TABLE)("is $utilisation after $minutes min at $sg (Tinseth 1997)", (row) => {
    expectWithin(utilisation(row.sg, row.minutes), row.utilisation, 0.0006);
  });

  it("starts from nothing and only grows with time", () => {
    const byTime = Array.from({ length: 25 }, (_, i) => utilisation(1.05, 10 * i));
    expect(byTime[0]).toBe(0);
    expect(byTime).toEqual([...byTime].sort((a, b) => a - b));
  });

  it("falls with gravity, by the same factor for the same step", () => {
    expectWithin(utilisation(1.06, 60) / utilisation(1.05, 60), utilisation(1.1, 30) / utilisation(1.09, 30), 1e-12);
    expect(utilisation(1.06, 60)).toBeLessThan(utilisation(1.05, 60));
  });

  it("refuses a gravity and a time that nobody boils", () => {
    expect(() => utilisation(1.17, 60)).toThrow("gravity 1.17 SG is outside 1 to 1.16 SG");
    expect(() => utilisation(1.05, 241)).toThrow("boil time 241 min is outside 0 to 240 min");
  });
});

describe("tinsethIbu", () => {
  it.each([
    { a: addition(30, 0.05, 20, 1.05, 60), ibu: 17.3, working: "0.2308 × 0.05 × 30 000 / 20" },
    { a: addition(40, 0.12, 23, 1.065, 15), ibu: 20.87, working: "0.1000 × 0.12 × 40 000 / 23" },
  ])("is $ibu by hand: $working", ({ a, ibu }) => {
    expectWithin(tinsethIbu(a), ibu, 0.05);
  });

  it("doubles with the hops and halves with twice the wort", () => {
    const one = tinsethIbu(addition(20, 0.1, 20, 1.05, 60));
    expectWithin(tinsethIbu(addition(40, 0.1, 20, 1.05, 60)), 2 * one, 1e-9);
    expectWithin(tinsethIbu(addition(20, 0.1, 40, 1.05, 60)), one / 2, 1e-9);
  });

  it("refuses to bitter no wort", () => {
    expect(() => tinsethIbu(addition(20, 0.1, 0, 1.05, 60))).toThrow("wort 0 L is outside 0.001 to 100000 L");
  });
});

describe("ragerUtilisation", () => {
  it.each(RAGER_FIT)("is $percent % after $minutes min (fit worked by hand)", (row) => {
    expectWithin(ragerUtilisation(minutes(row.minutes)), row.percent, 0.02);
  });

  it.each(RAGER_STEPS)(
    "runs through the step of $fromMin to $toMin min at $percent % (Rager 1990, from memory)",
    (row) => {
      expect(ragerUtilisation(minutes(row.fromMin))).toBeLessThanOrEqual(row.percent);
      expect(ragerUtilisation(minutes(row.toMin)) + 0.02).toBeGreaterThanOrEqual(row.percent);
    },
  );

  it("refuses a time that nobody boils", () => {
    expect(() => ragerUtilisation(minutes(241))).toThrow("boil time 241 min is outside 0 to 240 min");
  });
});

describe("ragerIbu", () => {
  it("is 26.42 for 30 g at 6 % in 20 L of 1.060 after 60 min (0.3082 × 0.06 × 30 000 / 20 / 1.05)", () => {
    expectWithin(ragerIbu(addition(30, 0.06, 20, 1.06, 60)), 26.42, 0.05);
  });

  it("makes no difference of gravity up to 1.050", () => {
    expect(ragerIbu(addition(30, 0.06, 20, 1.04, 60))).toBe(ragerIbu(addition(30, 0.06, 20, 1.05, 60)));
  });

  it("refuses a gravity that nobody boils", () => {
    expect(() => ragerIbu(addition(30, 0.06, 20, 1.17, 60))).toThrow("gravity 1.17 SG is outside 1 to 1.16 SG");
  });
});
