import { describe, expect, it } from "vitest";
import { fermentability, starchConversion, type MashCurve } from "@/lib/calc/mash";
import { integrateOde } from "@/lib/calc/numerics";
import { celsius, minutes, type Celsius, type Minutes } from "@/lib/calc/units";
import { expectWithin } from "../../support/expect-within";

const rest = (celsius: number, minutes = 60): MashCurve => [
  [0, celsius],
  [minutes, celsius],
];
const limit = (curve: MashCurve): number => fermentability({ curve }).apparentLimit;

const STEPPED: MashCurve = [
  [0, 50],
  [15, 50],
  [27, 62],
  [62, 62],
  [72, 72],
  [92, 72],
  [98, 78],
  [108, 78],
];

/** The equations of the mash, straight from the sources of the function, per minute. */
function rates(celsius: number): Record<"alphaDeath" | "betaDeath" | "opening" | "closed" | "pace", number> {
  const kelvin = celsius + 273.15;
  const arrhenius = (joules: number): number => Math.exp((joules / 8.314462618) * (1 / 338.15 - 1 / kelvin));
  return {
    alphaDeath: 60 * 6.9e30 * Math.exp(-224_200 / (8.314462618 * kelvin)),
    betaDeath: (-Math.log(0.17) / 30) * arrhenius(410_700),
    opening: 60 * 3.1e14 * Math.exp(-108_300 / (8.314462618 * kelvin)),
    closed: 1 / (1 + Math.exp((celsius - 59) / 1.75)),
    pace: arrhenius(50_000),
  };
}

interface State {
  readonly dextrin: number;
  readonly sugar: number;
  readonly alpha: number;
  readonly beta: number;
}

function bySecondMethod(curve: MashCurve): State {
  let y: readonly number[] = [1, 0, 0, 0, 1, 1];
  let before = curve[0];
  for (const point of curve) {
    const from = before;
    before = point;
    if (from === undefined || point[0] <= from[0]) continue;
    const outcome = integrateOde({
      slopes: (t, [closed = 0, open = 0, dextrin = 0, , alpha = 0, beta = 0], out) => {
        const at = rates(from[1] + ((point[1] - from[1]) * (t - from[0])) / (point[0] - from[0]));
        const opening = at.opening * Math.max(0, closed - at.closed);
        const toDextrin = 0.83 * at.pace * 5 * alpha * open;
        const toSugar = at.pace * (0.17 * 5 * alpha + 15 * beta) * open;
        const onward = at.pace * (0.011 * alpha + 0.028 * beta) * dextrin;
        out[0] = -opening;
        out[1] = opening - toDextrin - toSugar;
        out[2] = toDextrin - onward;
        out[3] = toSugar + onward;
        out[4] = -at.alphaDeath * alpha;
        out[5] = -at.betaDeath * beta;
      },
      from: from[0],
      to: point[0],
      start: y,
      relative: 1e-8,
      absolute: 1e-10,
    });
    expect(outcome.ok).toBe(true);
    y = outcome.y;
  }
  const [, , dextrin = NaN, sugar = NaN, alpha = NaN, beta = NaN] = y;
  return { dextrin, sugar, alpha, beta };
}

describe("fermentability", () => {
  it.each([
    ["an hour at 55 °C", rest(55)],
    ["an hour at 63 °C", rest(63)],
    ["an hour at 66 °C", rest(66)],
    ["an hour at 72 °C", rest(72)],
    ["half an hour at 78 °C", rest(78, 30)],
    ["a stepped mash", STEPPED],
    [
      "a slow rise",
      [
        [0, 45],
        [60, 78],
      ],
    ],
    [
      "a jump of temperature, and cooling",
      [
        [0, 52],
        [20, 52],
        [20, 68],
        [70, 63],
      ],
    ],
  ] as const)("agrees with the equations integrated by a second method to 0.001: %s", (_name, curve) => {
    const second = bySecondMethod(curve);
    const found = fermentability({ curve });
    const converted = second.dextrin + second.sugar;
    expectWithin(found.fermentable, (0.09 + 0.79 * 0.82 * second.sugar) / (0.21 + 0.79 * converted), 0.001);
    expectWithin(found.apparentLimit, found.fermentable / 0.8192, 1e-12);
    expectWithin(found.converted, converted, 0.001);
    expectWithin(found.alphaLeft, second.alpha, 0.001);
    expectWithin(found.betaLeft, second.beta, 0.001);
  });

  it.each([
    { at: 65, apparent: 0.82 },
    { at: 70, apparent: 0.7 },
    { at: 75, apparent: 0.5 },
    { at: 80, apparent: 0.3 },
  ])("is within 2.5 points of $apparent after an hour at $at °C (Chandrasekhar, to which it is fitted)", (row) => {
    expectWithin(limit(rest(row.at)), row.apparent, 0.025);
  });

  it("leaves 17 % of the β-amylase and more than half of the α-amylase at 65 °C (Muller 1990)", () => {
    expectWithin(fermentability({ curve: rest(65, 30) }).betaLeft, 0.17, 0.005);
    expect(fermentability({ curve: rest(65) }).alphaLeft).toBeGreaterThan(0.5);
  });

  it("is best from an hour at 62 to 63 °C (62.5 °C: Hamilton and Lewis 1974)", () => {
    const temperatures = Array.from({ length: 41 }, (_, i) => 55 + i / 2);
    const best = temperatures.reduce((one, other) => (limit(rest(other)) > limit(rest(one)) ? other : one));
    expectWithin(best, 62.5, 0.5);
  });

  it("is higher after an hour at 62.7 °C than at 65.5 °C, and like it after half (Harris and MacWilliam 1961)", () => {
    const usual = limit(rest(65.5));
    expect(limit(rest(62.7))).toBeGreaterThan(usual + 0.015);
    expectWithin(limit(rest(62.7, 30)), usual, 0.015);
  });

  it("falls from 63 °C upwards: hotter mashes make sweeter beer (common practice, no source)", () => {
    const limits = Array.from({ length: 30 }, (_, i) => limit(rest(63 + i / 2)));
    expect(limits).toEqual([...limits].sort((a, b) => b - a));
  });

  it.each([63, 66, 70])("never falls the longer a rest at %d °C goes on", (celsius) => {
    const limits = Array.from({ length: 40 }, (_, i) => limit(rest(celsius, 15 + 3 * i)));
    expect(limits).toEqual([...limits].sort((a, b) => a - b));
  });

  it("is stopped by a mash-out at 78 °C: an hour more there changes less than half a point", () => {
    const mashedOut = [...rest(66), [72, 78], [82, 78]] as const;
    const waiting = [...mashedOut, [142, 78]] as const;
    expect(fermentability({ curve: mashedOut }).betaLeft).toBeLessThan(1e-6);
    expectWithin(limit(waiting), limit(mashedOut), 0.005);
    const goingOn = [...rest(66), [142, 66]] as const;
    expect(limit(goingOn) - limit(rest(66))).toBeGreaterThan(limit(waiting) - limit(mashedOut));
  });

  it("does not mind points along a straight line, nor when the clock starts", () => {
    const divided = Array.from({ length: 13 }, (_, i) => [5 * i, 66] as const);
    expectWithin(limit(divided), limit(rest(66)), 0.0005);
    const later = rest(66).map(([minute, celsius]) => [minute + 100, celsius] as const);
    expectWithin(limit(later), limit(rest(66)), 1e-12);
  });

  it("is that of the malt's own sugars at a single point: 0.09 of 0.21 (by hand)", () => {
    const { fermentable, converted, alphaLeft, betaLeft } = fermentability({ curve: [[0, 66]] });
    expectWithin(fermentable, 0.09 / 0.21, 1e-12);
    expect({ converted, alphaLeft, betaLeft }).toEqual({ converted: 0, alphaLeft: 1, betaLeft: 1 });
  });

  it("takes jumps of no length and curves of two days at the ends of its range", () => {
    const extreme: MashCurve = [
      [0, 0],
      [Number.MIN_VALUE, 102],
      [1, 0],
      [1, 102],
      [2880, 102],
    ];
    expect(Object.values(fermentability({ curve: extreme })).every(Number.isFinite)).toBe(true);
  });

  it.each([
    { curve: [] as MashCurve, says: "points of the mash curve 0 points is outside 1 to 1000 points" },
    {
      curve: [
        [10, 66],
        [5, 66],
      ] as MashCurve,
      says: "minute of the mash curve 5 min is outside 10 to 2880 min",
    },
    { curve: [[2881, 66]] as MashCurve, says: "minute of the mash curve 2881 min is outside 0 to 2880 min" },
    { curve: [[0, -1]] as MashCurve, says: "mash temperature -1 °C is outside 0 to 102 °C" },
    { curve: [[0, 103]] as MashCurve, says: "mash temperature 103 °C is outside 0 to 102 °C" },
    { curve: [[0, NaN]] as MashCurve, says: "mash temperature NaN °C is outside 0 to 102 °C" },
    { curve: [[NaN, 66]] as MashCurve, says: "minute of the mash curve NaN min is outside 0 to 2880 min" },
  ])("refuses: $says", ({ curve, says }) => {
    expect(() => fermentability({ curve })).toThrow(says);
    expect(() => starchConversion({ curve })).toThrow(says);
  });
});

describe("fermentability of rests", () => {
  it("is that of the curve that steps from rest to rest", () => {
    const steps = [
      { celsius: celsius(63), minutes: minutes(30) },
      { celsius: celsius(72), minutes: minutes(20) },
    ];
    const curve = [
      [0, 63],
      [30, 63],
      [30, 72],
      [50, 72],
    ] as const;
    expect(fermentability({ steps })).toEqual(fermentability({ curve }));
  });

  it("refuses a rest that runs back in time and a mash without rests", () => {
    // As it may come out of JSON.
    const backwards = JSON.parse('[{ "celsius": 63, "minutes": -1 }]') as { celsius: Celsius; minutes: Minutes }[];
    expect(() => fermentability({ steps: backwards })).toThrow("length of the rest -1 min is outside 0 to 2880 min");
    expect(() => fermentability({ steps: [] })).toThrow(
      "points of the mash curve 0 points is outside 1 to 1000 points",
    );
  });
});

describe("starchConversion", () => {
  it("passes 95 % within an hour at 65.5 °C (Harris and MacWilliam 1961)", () => {
    expect(starchConversion({ curve: rest(65.5) })).toBeGreaterThan(0.95);
  });

  it("is next to nothing at 50 °C alone, where the granules stay closed", () => {
    expect(starchConversion({ curve: rest(50, 120) })).toBeLessThan(0.01);
  });

  it("rises with temperature up to the mash-out, and with time", () => {
    const hotter = [55, 58, 60, 62, 64, 66, 70, 75, 78].map((celsius) => starchConversion({ curve: rest(celsius) }));
    const longer = [1, 5, 10, 20, 60, 120].map((minutes) => starchConversion({ curve: rest(64, minutes) }));
    expect(hotter).toEqual([...hotter].sort((a, b) => a - b));
    expect(longer).toEqual([...longer].sort((a, b) => a - b));
  });

  it("fails in water so hot that the enzymes die first", () => {
    expect(starchConversion({ curve: rest(98) })).toBeLessThan(starchConversion({ curve: rest(78) }) - 0.3);
  });

  it("is what fermentability says of the same mash", () => {
    expect(starchConversion({ curve: STEPPED })).toBe(fermentability({ curve: STEPPED }).converted);
  });
});
