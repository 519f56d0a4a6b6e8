import { describe, expect, it } from "vitest";
import {
  equivalentBoilMinutes,
  ibuFromEquivalentMinutes,
  isomerisationRates,
  tinsethIbu,
  type TemperatureCurve,
} from "@/lib/calc/bitterness";
import { integrateOde } from "@/lib/calc/numerics";
import { celsius, fraction, grams, litres, minutes, specificGravity } from "@/lib/calc/units";
import { expectWithin } from "../../support/expect-within";

const equivalent = (curve: TemperatureCurve): number => equivalentBoilMinutes({ curve });

/** The same integral by another method: adaptive Runge–Kutta over each straight line. */
function bySecondMethod(curve: TemperatureCurve): number {
  const rateAt100 = 7.9e11 * Math.exp(-11858 / 373.15);
  let sum = 0;
  for (let i = 1; i < curve.length; i++) {
    const [t0, c0] = curve[i - 1] ?? [0, 0];
    const [t1, c1] = curve[i] ?? [0, 0];
    const ended = integrateOde({
      slopes: (t, _y, out) => {
        out[0] = (7.9e11 * Math.exp(-11858 / (c0 + ((c1 - c0) * (t - t0)) / (t1 - t0) + 273.15))) / rateAt100;
      },
      from: t0,
      to: t1,
      start: [0],
      relative: 1e-11,
      absolute: 1e-14,
    });
    sum += ended.y[0] ?? NaN;
  }
  return sum;
}

const CURVES: readonly { readonly what: string; readonly curve: TemperatureCurve }[] = [
  {
    what: "a slow fall over 3 K",
    curve: [
      [0, 99],
      [20, 96],
    ],
  },
  {
    what: "a fall over 8 K",
    curve: [
      [0, 98],
      [20, 90],
    ],
  },
  {
    what: "one line over 25 K",
    curve: [
      [3, 75],
      [20, 100],
    ],
  },
  {
    what: "one line from the boil to 0 °C",
    curve: [
      [0, 100],
      [15, 0],
    ],
  },
  {
    what: "boil, stand and chill",
    curve: [
      [0, 99],
      [10, 99],
      [18, 78],
      [43, 74],
      [50, 45],
      [60, 20],
    ],
  },
];

describe("equivalentBoilMinutes", () => {
  it("counts a boil at 100 °C minute for minute", () => {
    expectWithin(
      equivalent([
        [0, 100],
        [60, 100],
      ]),
      60,
      1e-9,
    );
  });

  it.each([80, 90, 96.7])("counts time at a constant %s °C by the ratio of the rates", (degrees) => {
    const ratio = isomerisationRates(celsius(degrees)).k1 / isomerisationRates(celsius(100)).k1;
    expectWithin(
      equivalent([
        [0, degrees],
        [30, degrees],
      ]),
      30 * ratio,
      1e-9,
    );
  });

  it("counts 30 min at 80 °C as 4.96 (0.002065 / 0.01250 of them, by hand)", () => {
    expectWithin(
      equivalent([
        [0, 80],
        [30, 80],
      ]),
      (30 * 0.002065) / 0.0125,
      0.03,
    );
  });

  it.each(CURVES)("agrees with a second method to 1e-6 along $what", ({ curve }) => {
    expectWithin(equivalent(curve) / bySecondMethod(curve), 1, 1e-6);
  });

  it("does not care where a straight line is cut", () => {
    const whole = equivalent([
      [0, 100],
      [20, 60],
    ]);
    expectWithin(
      equivalent([
        [0, 100],
        [5, 90],
        [20, 60],
      ]) / whole,
      1,
      1e-6,
    );
  });

  it("does not care when the curve begins or which way it runs", () => {
    const down = equivalent([
      [0, 95],
      [10, 70],
    ]);
    expectWithin(
      equivalent([
        [7, 95],
        [17, 70],
      ]),
      down,
      1e-12,
    );
    expectWithin(
      equivalent([
        [0, 70],
        [10, 95],
      ]),
      down,
      1e-12,
    );
  });

  it("gives a sudden change no time, and an empty curve nothing", () => {
    expectWithin(
      equivalent([
        [0, 100],
        [4, 100],
        [4, 20],
        [4, 100],
        [6, 100],
      ]),
      6,
      1e-9,
    );
    expect(equivalent([])).toBe(0);
    expect(equivalent([[0, 100]])).toBe(0);
  });

  it("counts an hour under 50 °C as less than half a minute", () => {
    expect(
      equivalent([
        [0, 50],
        [60, 20],
      ]),
    ).toBeLessThan(0.5);
  });

  it("refuses ice, pressure cookers and clocks that run back", () => {
    expect(() => equivalent([[0, -1]])).toThrow("temperature of the curve -1 °C is outside 0 to 110 °C");
    expect(() => equivalent([[0, 111]])).toThrow("temperature of the curve 111 °C is outside 0 to 110 °C");
    expect(() =>
      equivalent([
        [2, 100],
        [1, 100],
      ]),
    ).toThrow("minute of the curve 1 min is outside 2 to 1000000 min");
    expect(() => equivalent([[NaN, 100]])).toThrow("minute of the curve NaN min is outside");
  });
});

describe("ibuFromEquivalentMinutes", () => {
  it("is Tinseth's figure for a boil at 100 °C", () => {
    const hops = { grams: grams(30), alphaFraction: fraction(0.05), litres: litres(20), sg: specificGravity(1.05) };
    const equivalentMinutes = equivalentBoilMinutes({
      curve: [
        [0, 100],
        [60, 100],
      ],
    });
    expectWithin(
      ibuFromEquivalentMinutes({ ...hops, equivalentMinutes }),
      tinsethIbu({ ...hops, minutes: minutes(60) }),
      1e-9,
    );
  });
});
