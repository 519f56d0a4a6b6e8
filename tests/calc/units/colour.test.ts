import { describe, expect, it } from "vitest";
import { ebc, ebcFromSrm, lovibond, lovibondFromSrm, srm, srmFromEbc, srmFromLovibond } from "@/lib/calc/units";
import { MALT_COLOUR } from "../../reference/conversions";
import { expectWithin } from "../../support/expect-within";

describe("ebcFromSrm", () => {
  it("is 19.685 for 10 SRM: 25 over 12.7 (EBC Analytica 9.6, ASBC Beer-10A)", () => {
    expectWithin(ebcFromSrm(srm(10)), 19.685, 0.0005);
  });

  it("is undone by srmFromEbc", () => {
    for (const value of [0, 1, 8, 40, 400]) expectWithin(ebcFromSrm(srmFromEbc(ebc(value))), value, 1e-12 * value);
  });

  it("refuses a negative colour", () => {
    expect(() => ebcFromSrm(-1 as never)).toThrow("colour -1 SRM is outside 0 to 2000 SRM");
  });
});

describe("srmFromLovibond", () => {
  it.each(MALT_COLOUR)("is $srm SRM for $lovibond °L (common practice, no source)", (row) => {
    expectWithin(srmFromLovibond(lovibond(row.lovibond)), row.srm, 0.002);
    expectWithin(lovibondFromSrm(srm(row.srm)), row.lovibond, 0.002);
  });

  it("is undone by lovibondFromSrm where the malt has colour", () => {
    for (const value of [0.6, 2, 60, 550]) {
      expectWithin(lovibondFromSrm(srmFromLovibond(lovibond(value))), value, 1e-12 * value);
    }
  });

  it("gives no colour to white sugar", () => {
    expect(srmFromLovibond(lovibond(0))).toBe(0);
  });

  it("refuses what is darker than any malt", () => {
    expect(() => srmFromLovibond(1501 as never)).toThrow("malt colour 1501 °L is outside 0 to 1500 °L");
  });
});
