import { describe, expect, it } from "vitest";
import { standIbu, tinsethIbu, type TemperatureCurve } from "@/lib/calc/bitterness";
import { fraction, grams, litres, minutes, specificGravity } from "@/lib/calc/units";
import { expectWithin } from "../../support/expect-within";

const hops = { alphaFraction: fraction(0.1), grams: grams(50), litres: litres(20), sg: specificGravity(1.05) };
const stand = (curve: TemperatureCurve): number => standIbu({ ...hops, curve });

// By hand, k1(T)/k1(100 °C) = exp(11858 (1/373.15 − 1/T)): 0.64947 at 95 °C, 0.41683 at 90, 0.26423 at 85, 0.16535 at 80.
// Utilisation at 1.050 is 1.65 × 0.000125^0.05 / 4.15 = 0.253677 times (1 − e^(−0.04 t)); 50 g of 10 % in 20 L are 250 mg/L.
const bitterness = (equivalentMin: number): number => 250 * 0.253677 * (1 - Math.exp(-0.04 * equivalentMin));

describe("standIbu", () => {
  it("counts 20 min at 80 °C after a fast chill as 3.307 min of boil: 7.86 IBU", () => {
    const held = stand([
      [0, 80],
      [20, 80],
    ]);
    expectWithin(held, bitterness(3.307), 0.005);
    expectWithin(held, 7.858, 0.005);
  });

  it("counts 20 min of cooling from 100 to 80 °C as 9.42 min: 19.9 IBU, two and a half times the stand", () => {
    // Simpson: 20/12 × (1 + 4 × 0.64947 + 2 × 0.41683 + 4 × 0.26423 + 0.16535) = 9.423.
    const cooled = stand([
      [0, 100],
      [20, 80],
    ]);
    expectWithin(cooled, bitterness(9.423), 0.005);
    expectWithin(cooled, 19.916, 0.01);
  });

  it("adds up along the way down and the stand after it: 12.73 min", () => {
    const slow = stand([
      [0, 100],
      [20, 80],
      [40, 80],
    ]);
    expectWithin(slow, bitterness(9.423 + 3.307), 0.01);
  });

  it("is a boil where the curve is one", () => {
    const boiled = stand([
      [0, 100],
      [15, 100],
    ]);
    expectWithin(boiled, tinsethIbu({ ...hops, minutes: minutes(15) }), 1e-9);
  });

  it("gives nothing to hops that never see heat", () => {
    expect(stand([])).toBe(0);
    expect(stand([[0, 80]])).toBe(0);
    expect(
      stand([
        [0, 20],
        [60, 20],
      ]),
    ).toBeLessThan(0.03);
  });

  it("refuses a curve that is none and hops without wort", () => {
    expect(() => stand([[0, 111]])).toThrow("temperature of the curve 111 °C is outside 0 to 110 °C");
    expect(() =>
      stand([
        [0, 20],
        [1_000_001, 20],
      ]),
    ).toThrow("minute of the curve 1000001 min is outside 0 to 1000000 min");
    expect(
      stand([
        [0, 20],
        [1_000_000, 20],
      ]),
    ).toBeGreaterThan(0);
    expect(() => standIbu({ ...hops, litres: 0 as never, curve: [] })).toThrow("wort 0 L is outside 0.001 to 100000 L");
    expect(() =>
      stand([
        [0, 100],
        [241, 100],
      ]),
    ).toThrow("boil time 241 min is outside 0 to 240 min");
  });
});
