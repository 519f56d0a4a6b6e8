import { describe, expect, it } from "vitest";
import { fraction, kilogramsPerLitre, litres, millilitres, ph } from "@/lib/calc/units";
import { ACIDS, ACID_SOLUTIONS, acidMilliequivalents, ionsFromAcids, type AcidSolution } from "@/lib/calc/water";
import { expectPrinted } from "../../support/expect-printed";
import { expectWithin } from "../../support/expect-within";

const meq = (acid: AcidSolution, ml: number, toPh: number): number =>
  acidMilliequivalents({ acid, ml: millilitres(ml), toPh: ph(toPh) });

describe("acidMilliequivalents", () => {
  // Molarity × mean charge; IUPAC 2021 weights, CRC constants at 25 °C.
  it.each([
    { name: "lactic88", at: 5.4, printed: "11.48", working: "1000 × 1.209 × 0.88 / 90.078 × 1/(1 + 10^(3.86 − 5.4))" },
    { name: "lactic88", at: 3.86, printed: "5.906", working: "half of 11.8111 at its own pK" },
    { name: "lactic80", at: 5.6, printed: "10.38", working: "1000 × 1.19 × 0.80 / 90.078 × 0.98213" },
    {
      name: "phosphoric10",
      at: 5.4,
      printed: "1.091",
      working: "1.07466 × 1.0151",
    },
    { name: "phosphoric75", at: 5.4, printed: "12.27", working: "12.0849 × 1.0151" },
    { name: "phosphoric85", at: 6, printed: "15.48", working: "14.6157 × (7112 + 2 × 450.8) / 7563.8" },
    { name: "hydrochloric10", at: 5.4, printed: "2.875", working: "1000 × 1.048 × 0.1 / 36.458" },
    { name: "hydrochloric32", at: 5.4, printed: "10.17", working: "1000 × 1.159 × 0.32 / 36.458" },
    { name: "sulfuric10", at: 5.4, printed: "2.174", working: "1000 × 1.0661 × 0.1 / 98.072 × 1.9996" },
    { name: "sulfuric50", at: 1.99, printed: "10.67", working: "7.1131 × 1.5 at its second pK" },
  ] as const)("gives $printed mEq from 1 mL of $name at pH $at ($working)", ({ name, at, printed }) => {
    expectPrinted(meq(ACID_SOLUTIONS[name], 1, at), printed);
  });

  it("needs 1.742 mL of 88 % lactic acid or 18.33 mL of 10 % phosphoric acid for 20 mEq at pH 5.4 (by hand)", () => {
    expectWithin(meq(ACID_SOLUTIONS.lactic88, 1.742, 5.4), 20, 0.01);
    expectWithin(meq(ACID_SOLUTIONS.phosphoric10, 18.33, 5.4), 20, 0.01);
  });

  it("counts all three protons of phosphoric and citric acid in lye and next to none in strong acid", () => {
    const one = (acid: "phosphoric" | "citric", molarMass: number): AcidSolution => ({
      acid,
      massFraction: fraction(molarMass / 1000),
      density: kilogramsPerLitre(1),
    });
    // One mmol per mL; H3PO4 97.994, citric acid 192.123 g/mol.
    expectWithin(meq(one("phosphoric", 97.994), 1, 14), 3, 0.03);
    expectWithin(meq(one("citric", 192.123), 1, 14), 3, 1e-6);
    expectWithin(meq(one("citric", 192.123), 1, 0), 0, 0.001);
    // At pH 4.76 with pK 3.13, 4.76 and 6.40: shares 1, 42.66, 42.66 and 0.977; (42.66 + 85.32 + 2.93) / 87.30.
    expectWithin(meq(one("citric", 192.123), 1, 4.76), 1.4996, 0.001);
  });

  it.each(ACIDS)("gives %s more to do the higher the pH, and in proportion to its volume", (acid) => {
    const solution: AcidSolution = { acid, massFraction: fraction(0.1), density: kilogramsPerLitre(1.05) };
    let before = -1;
    for (let at = 0; at <= 14; at += 0.5) {
      const here = meq(solution, 2, at);
      expect(here).toBeGreaterThanOrEqual(before);
      expectWithin(here, 2 * meq(solution, 1, at), 1e-12);
      before = here;
    }
  });

  it("refuses a negative volume, an acid stronger than pure and a density of no acid", () => {
    const minus = JSON.parse("-1") as ReturnType<typeof millilitres>;
    const acid = ACID_SOLUTIONS.lactic80;
    expect(() => acidMilliequivalents({ acid, ml: minus, toPh: ph(5) })).toThrow(
      "volume of acid -1 mL is outside 0 to 1000000 mL",
    );
    expect(() => meq({ ...acid, massFraction: fraction(0) }, 1, 5)).toThrow(
      "strength of the acid 0 is outside 0.001 to 1",
    );
    expect(() => meq({ ...acid, density: kilogramsPerLitre(0.89) }, 1, 5)).toThrow(
      "density of the acid 0.89 kg/L is outside 0.9 to 2 kg/L",
    );
    const off = JSON.parse("-0.1") as ReturnType<typeof ph>;
    expect(() => acidMilliequivalents({ acid, ml: millilitres(1), toPh: off })).toThrow(
      "pH -0.1 pH is outside 0 to 14",
    );
  });
});

describe("ionsFromAcids", () => {
  it("leaves chloride and sulfate, by hand, and nothing else", () => {
    const ions = ionsFromAcids({
      litres: litres(10),
      acids: [
        { acid: ACID_SOLUTIONS.hydrochloric10, ml: millilitres(10) },
        { acid: ACID_SOLUTIONS.sulfuric10, ml: millilitres(5) },
        { acid: ACID_SOLUTIONS.lactic88, ml: millilitres(20) },
        { acid: ACID_SOLUTIONS.phosphoric85, ml: millilitres(20) },
      ],
    });
    // 10 mL × 2.8745 mmol/mL × 35.45 mg/mmol / 10 L, and 5 × 1.08706 × 96.056 / 10.
    expectPrinted(ions.chloride, "101.9");
    expectPrinted(ions.sulfate, "52.2");
    expect([ions.calcium, ions.magnesium, ions.sodium, ions.bicarbonate]).toEqual([0, 0, 0, 0]);
  });

  it("adds up several of one acid", () => {
    const once = { acid: ACID_SOLUTIONS.hydrochloric10, ml: millilitres(5) };
    const twice = ionsFromAcids({ litres: litres(10), acids: [once, once] });
    expectPrinted(twice.chloride, "101.9");
  });

  it("refuses acid without water and a negative volume", () => {
    const acid = ACID_SOLUTIONS.hydrochloric10;
    expect(() => ionsFromAcids({ litres: litres(0), acids: [] })).toThrow("water 0 L is outside 0.001 to 100000 L");
    const minus = JSON.parse("-1") as ReturnType<typeof millilitres>;
    expect(() => ionsFromAcids({ litres: litres(1), acids: [{ acid, ml: minus }] })).toThrow(
      "volume of acid -1 mL is outside 0 to 1000000 mL",
    );
  });
});
