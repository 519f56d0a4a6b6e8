import { describe, expect, it } from "vitest";
import { isoFraction, isomerisationRates, type TemperatureCurve } from "@/lib/calc/bitterness";
import { celsius } from "@/lib/calc/units";
import { expectWithin } from "../../support/expect-within";

const GAS_CONSTANT_KJ = 8.314462618e-3;

const flat = (degrees: number, time: number): TemperatureCurve => [
  [0, degrees],
  [time, degrees],
];

/** Newton cooling drawn with short straight lines. */
const cooling = (startC: number, ambientC: number, tauMin: number, time: number): TemperatureCurve =>
  Array.from({ length: 121 }, (_, i) => {
    const minute = (time * i) / 120;
    return [minute, ambientC + (startC - ambientC) * Math.exp(-minute / tauMin)] as const;
  });

describe("isomerisationRates", () => {
  it.each([
    { at: 80, k1: 0.002065, within: 1e-5 },
    { at: 85, k1: 0.0033, within: 2e-5 },
    { at: 95, k1: 0.008112, within: 4e-5 },
  ])("has k1 = $k1 at $at °C (7.9e11 exp(−11858/T), Malowicki and Shellhammer 2005)", ({ at, k1, within }) => {
    expectWithin(isomerisationRates(celsius(at)).k1, k1, within);
  });

  it.each([
    { at: 90, k2: 0.001183, within: 6e-6 },
    { at: 100, k2: 0.003087, within: 2e-5 },
  ])("has k2 = $k2 at $at °C (4.1e12 exp(−12994/T), Malowicki and Shellhammer 2005)", ({ at, k2, within }) => {
    expectWithin(isomerisationRates(celsius(at)).k2, k2, within);
  });

  it("halves the alpha acids in 55.5 min at 100 °C (ln 2 / k1)", () => {
    expectWithin(Math.LN2 / isomerisationRates(celsius(100)).k1, 55.5, 0.3);
  });

  it("has the activation energies of the abstract, 98.6 and 108.0 kJ/mol", () => {
    const cold = isomerisationRates(celsius(90));
    const hot = isomerisationRates(celsius(130));
    const inverse = 1 / 363.15 - 1 / 403.15;
    expectWithin((GAS_CONSTANT_KJ * Math.log(hot.k1 / cold.k1)) / inverse, 98.6, 0.1);
    expectWithin((GAS_CONSTANT_KJ * Math.log(hot.k2 / cold.k2)) / inverse, 108.0, 0.1);
  });

  it("refuses temperatures far from the studied ones", () => {
    expect(() => isomerisationRates(celsius(49))).toThrow("temperature 49 °C is outside 50 to 130 °C");
    const hot = JSON.parse("131") as ReturnType<typeof celsius>;
    expect(() => isomerisationRates(hot)).toThrow("temperature 131 °C is outside 50 to 130 °C");
  });
});

describe("isoFraction", () => {
  it.each([
    { curve: flat(100, 60), iso: 0.4759, what: "60 min at 100 °C" },
    { curve: flat(100, 90), iso: 0.5745, what: "90 min at 100 °C" },
    { curve: flat(100, 120), iso: 0.6203, what: "120 min at 100 °C" },
    { curve: flat(90, 60), iso: 0.2585, what: "60 min at 90 °C" },
    { curve: cooling(80, 20, 300, 45), iso: 0.0608, what: "45 min falling from 80 °C with a time constant of 5 h" },
    { curve: cooling(98, 20, 60, 60), iso: 0.0975, what: "60 min falling from 98 °C with a time constant of 1 h" },
  ])("is $iso after $what (consecutive first-order reactions, solved independently)", ({ curve, iso }) => {
    expectWithin(isoFraction({ curve }), iso, 0.0005);
  });

  it("agrees with the closed form at constant temperature", () => {
    const { k1, k2 } = isomerisationRates(celsius(97));
    for (const time of [1, 30, 200]) {
      const closed = (k1 / (k2 - k1)) * (1 / Math.exp(k1 * time) - 1 / Math.exp(k2 * time));
      expectWithin(isoFraction({ curve: flat(97, time) }), closed, 1e-8);
    }
  });

  it("peaks at 0.632 at 100 °C, after ln(k1/k2)/(k1 − k2)", () => {
    const { k1, k2 } = isomerisationRates(celsius(100));
    const peak = Math.log(k1 / k2) / (k1 - k2);
    expectWithin(isoFraction({ curve: flat(100, peak) }), 0.632, 0.001);
    expect(isoFraction({ curve: flat(100, peak * 1.2) })).toBeLessThan(isoFraction({ curve: flat(100, peak) }));
    expect(isoFraction({ curve: flat(100, peak * 0.8) })).toBeLessThan(isoFraction({ curve: flat(100, peak) }));
  });

  it("forms nothing in no time", () => {
    expect(isoFraction({ curve: [] })).toBe(0);
    expect(isoFraction({ curve: [[0, 100]] })).toBe(0);
  });

  it("refuses a curve that runs back in time", () => {
    expect(() =>
      isoFraction({
        curve: [
          [5, 100],
          [4, 90],
        ],
      }),
    ).toThrow("minute of the curve 4 min is outside 5 to 1000000 min");
  });
});
