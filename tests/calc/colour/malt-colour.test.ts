import { describe, expect, it } from "vitest";
import { danielsSrm, maltColourUnits, moreySrm, mosherSrm } from "@/lib/calc/colour";
import { kilograms, litres, lovibond } from "@/lib/calc/units";
import { MOREY } from "../../reference/colour";
import { expectPrinted } from "../../support/expect-printed";
import { expectWithin } from "../../support/expect-within";

describe("maltColourUnits", () => {
  const malt = (kg: number, colour: number): Parameters<typeof maltColourUnits>[0]["malts"][number] => ({
    kg: kilograms(kg),
    lovibond: lovibond(colour),
  });

  it("is 8.345 for 5 kg of 4 °L in 20 L: 8.3454 × 5 × 4 / 20 (by hand)", () => {
    expectPrinted(maltColourUnits({ malts: [malt(5, 4)], litres: litres(20) }), "8.345");
  });

  it("is the product of pounds and Lovibond in a US gallon (definition)", () => {
    expectWithin(maltColourUnits({ malts: [malt(0.45359237, 60)], litres: litres(3.785411784) }), 60, 1e-9);
  });

  it("adds malts up", () => {
    const both = maltColourUnits({ malts: [malt(4, 3), malt(0.2, 400)], litres: litres(20) });
    const one = maltColourUnits({ malts: [malt(4, 3)], litres: litres(20) });
    const other = maltColourUnits({ malts: [malt(0.2, 400)], litres: litres(20) });
    expectWithin(both, one + other, 1e-12);
    expect(maltColourUnits({ malts: [], litres: litres(20) })).toBe(0);
  });

  it("refuses no wort at all", () => {
    expect(() => maltColourUnits({ malts: [malt(4, 3)], litres: litres(0) })).toThrow(
      "volume 0 L is outside 0.1 to 100000 L",
    );
  });
});

describe("moreySrm", () => {
  it.each(MOREY)("is $srm SRM for $mcu units (Morey 1995)", ({ mcu, srm }) => {
    expectWithin(moreySrm(mcu), srm, 0.005);
  });

  it("starts at water and only rises", () => {
    const colours = Array.from({ length: 101 }, (_, i) => moreySrm(10 * i));
    expect(colours[0]).toBe(0);
    expect(colours).toEqual([...colours].sort((a, b) => a - b));
  });

  it("refuses a grist that could not be stirred", () => {
    expect(() => moreySrm(1001)).toThrow("malt colour units 1001 °L·lb/US gal is outside 0 to 1000 °L·lb/US gal");
  });
});

describe("the straight lines", () => {
  it("give 12.4 SRM (Daniels 2000) and 10.7 SRM (Mosher 1995) for 20 units", () => {
    expectPrinted(danielsSrm(20), "12.4");
    expectPrinted(mosherSrm(20), "10.7");
  });

  it("rise by 0.2 and 0.3 SRM for each unit", () => {
    expectWithin(danielsSrm(50) - danielsSrm(40), 2, 1e-12);
    expectWithin(mosherSrm(50) - mosherSrm(40), 3, 1e-12);
  });

  it("refuse pale grists, to which they give the colour of an amber beer", () => {
    expect(() => danielsSrm(10)).toThrow("malt colour units 10 °L·lb/US gal is outside 11 to 200 °L·lb/US gal");
    expect(() => mosherSrm(6)).toThrow("malt colour units 6 °L·lb/US gal is outside 7 to 200 °L·lb/US gal");
  });
});
