import { describe, expect, it } from "vitest";
import { beerLab, beerTransmission, colourDifference, type Lab, type Viewing } from "@/lib/calc/colour";
import { DAYLIGHT_D65, OBSERVER_X, OBSERVER_Y, OBSERVER_Z } from "@/lib/calc/colour/tables/cie-1931";
import { ILLUMINANT_C, OBSERVER_10_X, OBSERVER_10_Y, OBSERVER_10_Z } from "@/lib/calc/colour/tables/cie-1964";
import { srm } from "@/lib/calc/units";
import { BEER_LAB, COLOUR_PAIRS } from "../../reference/colour";
import { expectWithin } from "../../support/expect-within";

const lab = (colour: number, pathCm: number, viewing: Viewing): Lab => beerLab({ srm: srm(colour), pathCm, viewing });
const total = (light: readonly number[], column: readonly number[]): number =>
  light.reduce((sum, power, row) => sum + power * (column[row] ?? NaN), 0);

describe("the table of the observer of 10° and of illuminant C", () => {
  it("has 81 rows in every column", () => {
    const columns = [OBSERVER_10_X, OBSERVER_10_Y, OBSERVER_10_Z, ILLUMINANT_C];
    expect(columns.map((column) => column.length)).toEqual([81, 81, 81, 81]);
  });

  it("has the white points of ASTM E308: C 2° 98.074 and 118.232, D65 10° 94.811 and 107.304, C 10° 97.285 and 116.145", () => {
    const y2 = total(ILLUMINANT_C, OBSERVER_Y);
    expectWithin((100 * total(ILLUMINANT_C, OBSERVER_X)) / y2, 98.074, 0.05);
    expectWithin((100 * total(ILLUMINANT_C, OBSERVER_Z)) / y2, 118.232, 0.05);
    const y10 = total(DAYLIGHT_D65, OBSERVER_10_Y);
    expectWithin((100 * total(DAYLIGHT_D65, OBSERVER_10_X)) / y10, 94.811, 0.05);
    expectWithin((100 * total(DAYLIGHT_D65, OBSERVER_10_Z)) / y10, 107.304, 0.05);
    // The last pair from memory.
    const c10 = total(ILLUMINANT_C, OBSERVER_10_Y);
    expectWithin((100 * total(ILLUMINANT_C, OBSERVER_10_X)) / c10, 97.285, 0.05);
    expectWithin((100 * total(ILLUMINANT_C, OBSERVER_10_Z)) / c10, 116.145, 0.05);
  });
});

describe("beerLab", () => {
  it.each(BEER_LAB)("is $lightness, $a, $b for $srm SRM through $pathCm cm in $viewing", (row) => {
    const seen = lab(row.srm, row.pathCm, row.viewing);
    expectWithin(seen.lightness, row.lightness, 0.3);
    expectWithin(seen.a, row.a, 0.3);
    expectWithin(seen.b, row.b, 0.3);
  });

  it.each(["D65/2°", "C/10°"] as const)("is white without beer in %s", (viewing) => {
    const { lightness, a, b } = lab(0, 5, viewing);
    expectWithin(lightness, 100, 1e-12);
    expectWithin(a, 0, 1e-12);
    expectWithin(b, 0, 1e-12);
  });

  it("is black behind enough of it, where the curve is a straight line", () => {
    const { lightness, a, b } = lab(200, 100, "D65/2°");
    expectWithin(lightness, 0, 1e-9);
    expectWithin(Math.hypot(a, b), 0, 1e-6);
    // L = 24389/27 Y below Y = 216/24389, here with Y summed from the transmission.
    const through = ILLUMINANT_C.map(
      (power, row) => power * beerTransmission({ srm: srm(100), cm: 10, nm: 380 + 5 * row }),
    );
    const y = total(through, OBSERVER_10_Y) / total(ILLUMINANT_C, OBSERVER_10_Y);
    expect(y).toBeLessThan(216 / 24389);
    expectWithin(lab(100, 10, "C/10°").lightness, (24389 / 27) * y, 1e-9);
  });

  it("darkens with colour", () => {
    const byColour = Array.from({ length: 101 }, (_, i) => lab(2 * i, 5, "C/10°").lightness);
    expect(byColour).toEqual([...byColour].sort((a, b) => b - a));
  });

  it("sees 4 SRM through 5 cm and 20 SRM through 1 cm alike (Beer and Lambert)", () => {
    expect(lab(4, 5, "C/10°")).toEqual(lab(20, 1, "C/10°"));
  });

  it("refuses a colour and a path that no beer has", () => {
    expect(() => beerLab({ srm: 201, pathCm: 1, viewing: "C/10°" } as never)).toThrow(
      "colour 201 SRM is outside 0 to 200",
    );
    expect(() => beerLab({ srm: 5, pathCm: 101, viewing: "C/10°" } as never)).toThrow(
      "path 101 cm is outside 0 to 100",
    );
  });
});

describe("colourDifference", () => {
  it.each(COLOUR_PAIRS)("is %s %s %s from %s %s %s by %s (Sharma, Wu and Dalal 2005)", (...row) => {
    const [l1, a1, b1, l2, a2, b2, difference] = row;
    const one = { lightness: l1, a: a1, b: b1 };
    const other = { lightness: l2, a: a2, b: b2 };
    expectWithin(colourDifference({ one, other }), difference, 0.00005001);
    expectWithin(colourDifference({ one: other, other: one }), difference, 0.00005001);
  });

  it("takes the hue of the other colour where one is grey", () => {
    // With one chroma 0 the term of hue falls away: ΔL = 0, ΔC = 20 over 1 + 0.045 × 10 is 13.793, but for the stretch of a*,
    // which is none for b alone. No rotation: the mean hue is 90°, and the blue term e^−((90 − 275)/25)² is nothing.
    const grey = { lightness: 50, a: 0, b: 0 };
    const yellow = { lightness: 50, a: 0, b: 20 };
    expectWithin(colourDifference({ one: grey, other: yellow }), 20 / 1.45, 1e-9);
  });

  it("is nothing between a colour and itself", () => {
    const pale = lab(3, 1, "C/10°");
    expect(colourDifference({ one: pale, other: pale })).toBe(0);
  });

  it("tells two pale beers a unit apart better than two dark ones", () => {
    const apart = (colour: number): number =>
      colourDifference({ one: lab(colour, 1, "C/10°"), other: lab(colour + 1, 1, "C/10°") });
    expect(apart(3)).toBeGreaterThan(2 * apart(30));
  });

  it("refuses what is lighter than white and a number that is none", () => {
    const grey = { lightness: 50, a: 0, b: 0 };
    expect(() => colourDifference({ one: { ...grey, lightness: 100.1 }, other: grey })).toThrow(
      "lightness 100.1 is outside 0 to 100",
    );
    expect(() => colourDifference({ one: grey, other: { ...grey, a: 201 } })).toThrow(
      "a of the colour 201 is outside -200 to 200",
    );
    expect(() => colourDifference({ one: grey, other: { ...grey, b: NaN } })).toThrow(
      "b of the colour NaN is outside -200 to 200",
    );
  });
});
