import { describe, expect, it } from "vitest";
import { beerSrgb, beerTransmission } from "@/lib/calc/colour";
import { DAYLIGHT_D65, FIRST_NM, OBSERVER_X, OBSERVER_Y, OBSERVER_Z, STEP_NM } from "@/lib/calc/colour/tables/cie-1931";
import { srm } from "@/lib/calc/units";
import { ABSORBANCE, BEER_SRGB, OBSERVER } from "../../reference/colour";
import { expectWithin } from "../../support/expect-within";

const absorbance = (colour: number, nm: number): number =>
  -Math.log10(beerTransmission({ srm: srm(colour), cm: 1, nm }));

const onScreen = (colour: number, pathCm: number): readonly number[] => beerSrgb({ srm: srm(colour), pathCm });

describe("the table of the standard observer", () => {
  it.each(OBSERVER)("holds x $x, y $y, z $z at $nm nm (CIE 1931)", ({ nm, x, y, z }) => {
    const row = (nm - FIRST_NM) / STEP_NM;
    expectWithin(OBSERVER_X[row] ?? NaN, x, 0.0002);
    expectWithin(OBSERVER_Y[row] ?? NaN, y, 0.0002);
    expectWithin(OBSERVER_Z[row] ?? NaN, z, 0.0002);
  });

  it("has the white point of D65, 95.047 100 108.883 (ASTM E308)", () => {
    const sum = (column: readonly number[]): number =>
      DAYLIGHT_D65.reduce((total, power, row) => total + power * (column[row] ?? NaN), 0);
    expectWithin((100 * sum(OBSERVER_X)) / sum(OBSERVER_Y), 95.047, 0.05);
    expectWithin((100 * sum(OBSERVER_Z)) / sum(OBSERVER_Y), 108.883, 0.05);
  });

  it("has 81 rows in every column", () => {
    expect([OBSERVER_X, OBSERVER_Y, OBSERVER_Z, DAYLIGHT_D65].map((column) => column.length)).toEqual([81, 81, 81, 81]);
  });
});

describe("beerTransmission", () => {
  it.each(ABSORBANCE)("absorbs $absorbance at $nm nm in 1 cm of $srm SRM (deLange 2016)", (row) => {
    expectWithin(absorbance(row.srm, row.nm), row.absorbance, row.within);
  });

  it("absorbs at 700 nm 0.0364 of what it does at 430 nm, clear by ASBC Beer-10A (below 0.039)", () => {
    expectWithin(absorbance(10, 700) / absorbance(10, 430), 0.0364, 0.0005);
  });

  it("lets everything through where there is no beer", () => {
    expect(beerTransmission({ srm: srm(0), cm: 5, nm: 500 })).toBe(1);
    expect(beerTransmission({ srm: srm(20), cm: 0, nm: 500 })).toBe(1);
  });

  it("depends on colour and path only as a product (Beer and Lambert)", () => {
    for (let nm = 380; nm <= 780; nm += 50) {
      const wide = beerTransmission({ srm: srm(4), cm: 5, nm });
      expectWithin(beerTransmission({ srm: srm(20), cm: 1, nm }), wide, 1e-12);
    }
  });

  it("refuses light that nobody sees", () => {
    expect(() => beerTransmission({ srm: srm(10), cm: 1, nm: 800 })).toThrow(
      "wavelength 800 nm is outside 380 to 780 nm",
    );
  });
});

describe("beerSrgb", () => {
  it.each(BEER_SRGB)("shows $srm SRM through $pathCm cm as $rgb", (row) => {
    onScreen(row.srm, row.pathCm).forEach((value, channel) => {
      expectWithin(value, row.rgb[channel] ?? NaN, 2);
    });
  });

  it("is white without beer", () => {
    expect(onScreen(0, 5)).toEqual([255, 255, 255]);
  });

  it("shows 4 SRM through 5 cm and 20 SRM through 1 cm alike (Beer and Lambert)", () => {
    expect(onScreen(4, 5)).toEqual(onScreen(20, 1));
  });

  it("darkens in every channel as colour rises, and ends in black", () => {
    let before: readonly number[] = [255, 255, 255];
    for (let colour = 1; colour <= 200; colour += 1) {
      const now = onScreen(colour, 5);
      now.forEach((value, channel) => expect(value).toBeLessThanOrEqual(before[channel] ?? 0));
      before = now;
    }
    expect(Math.max(...onScreen(200, 20))).toBe(0);
  });

  it("refuses a colour that no beer has", () => {
    expect(() => beerSrgb({ srm: 201, pathCm: 5 } as never)).toThrow("colour 201 SRM is outside 0 to 200 SRM");
    expect(() => beerSrgb({ srm: 10, pathCm: -1 } as never)).toThrow("path -1 cm is outside 0 to 100 cm");
  });
});
