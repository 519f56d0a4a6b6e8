import { describe, expect, it } from "vitest";
import { grams, litres } from "@/lib/calc/units";
import { SALTS, chargeBalance, ionsFromSalts, type SaltGrams } from "@/lib/calc/water";
import { IONS_FROM_ONE_GRAM } from "../../reference/salts";
import { expectWithin } from "../../support/expect-within";

const inOneLitre = (salts: SaltGrams): ReturnType<typeof ionsFromSalts> =>
  ionsFromSalts({ litres: litres(1), grams: salts });

describe("ionsFromSalts", () => {
  it.each(IONS_FROM_ONE_GRAM)(
    "gives $milligrams mg/L $ion from 1 g/L of $salt ($working)",
    ({ salt, ion, milligrams }) => {
      expectWithin(inOneLitre({ [salt]: grams(1) })[ion], milligrams, 0.2);
    },
  );

  it("gives the calcium of 5 g anhydrous chloride at 77 % assay in 20 L when that is weighed as dihydrate", () => {
    // 0.77 × 5 g of CaCl2 (110.978 g/mol) holds as much calcium as 5.100 g of the dihydrate (147.008 g/mol).
    const asDihydrate = (0.77 * 5 * 147.008) / 110.978;
    const ions = ionsFromSalts({ litres: litres(20), grams: { calciumChlorideDihydrate: grams(asDihydrate) } });
    expectWithin(ions.calcium, 69.52, 0.1);
  });

  it.each(SALTS)("adds no net charge with %s", (salt) => {
    expectWithin(chargeBalance(inOneLitre({ [salt]: grams(1) })).relativeError, 0, 1e-12);
  });

  it("adds salts up, and halves them in twice the water", () => {
    const both = inOneLitre({ gypsum: grams(0.4), tableSalt: grams(0.1) });
    expectWithin(both.calcium, inOneLitre({ gypsum: grams(0.4) }).calcium, 1e-12);
    const half = ionsFromSalts({ litres: litres(2), grams: { gypsum: grams(0.4), tableSalt: grams(0.1) } });
    expectWithin(2 * half.chloride, both.chloride, 1e-12);
  });

  it("adds nothing where no salt is weighed", () => {
    expect(Object.values(inOneLitre({}))).toEqual([0, 0, 0, 0, 0, 0]);
  });

  it("refuses a negative mass, no water and more than water can hold", () => {
    const minus = JSON.parse('{ "gypsum": -1 }') as SaltGrams;
    expect(() => inOneLitre(minus)).toThrow("gypsum -1 g is outside 0 to 10000000 g");
    expect(() => ionsFromSalts({ litres: litres(0), grams: {} })).toThrow("water 0 L is outside 0.001 to 100000 L");
    expect(() => inOneLitre({ tableSalt: grams(100) })).toThrow(/sodium 39.* mg\/L is outside 0 to 10000 mg\/L/);
  });
});
