import { describe, expect, it } from "vitest";
import { milligramsPerLitre as mgL } from "@/lib/calc/units";
import { alkalinityFromBicarbonate, bicarbonateFromAlkalinity, hardness, residualAlkalinity } from "@/lib/calc/water";
import { expectWithin } from "../../support/expect-within";

const ROWS = [
  { what: "alkalinity of 100 mg/L bicarbonate", is: alkalinityFromBicarbonate(mgL(100)), value: 82.02, within: 0.03 },
  { what: "bicarbonate of 100 mg/L alkalinity", is: bicarbonateFromAlkalinity(mgL(100)), value: 121.93, within: 0.03 },
  {
    what: "hardness of 80 mg/L calcium and 12 mg/L magnesium (2.497 Ca + 4.118 Mg)",
    is: hardness({ calciumMgL: mgL(80), magnesiumMgL: mgL(12) }),
    value: 249.2,
    within: 0.1,
  },
  {
    what: "residual alkalinity of 150 − (70 Ca/3.5 + 14 Mg/7 as CaCO3)",
    is: residualAlkalinity({ calciumMgL: mgL(70), magnesiumMgL: mgL(14), alkalinityMgLCaCO3: mgL(150) }),
    value: 91.82,
    within: 0.1,
  },
  {
    what: "residual alkalinity by the rule Ca/1.4 + Mg/1.7, within its rounding",
    is: residualAlkalinity({ calciumMgL: mgL(70), magnesiumMgL: mgL(14), alkalinityMgLCaCO3: mgL(150) }),
    value: 150 - 70 / 1.4 - 14 / 1.7,
    within: 0.15,
  },
];

describe("alkalinity", () => {
  it.each(ROWS)("gives the $what as $value (worked by hand, IUPAC 2021 weights)", ({ is, value, within }) => {
    expectWithin(is, value, within);
  });

  it("goes from bicarbonate to alkalinity and back", () => {
    for (const bicarbonate of [0, 61, 250, 9000]) {
      expectWithin(bicarbonateFromAlkalinity(alkalinityFromBicarbonate(mgL(bicarbonate))), bicarbonate, 1e-9);
    }
  });

  it("leaves alkalinity as it is without calcium and magnesium, and can fall below zero with them", () => {
    const none = mgL(0);
    expect(residualAlkalinity({ calciumMgL: none, magnesiumMgL: none, alkalinityMgLCaCO3: mgL(120) })).toBe(120);
    expect(residualAlkalinity({ calciumMgL: mgL(100), magnesiumMgL: none, alkalinityMgLCaCO3: none })).toBeLessThan(0);
  });

  it("takes 3.5 equivalents of calcium, or 7 of magnesium, for one of alkalinity (Kolbach 1953)", () => {
    // One milliequivalent each: 20.039 mg calcium, 12.1525 mg magnesium, 50.043 mg calcium carbonate.
    const calcium = residualAlkalinity({
      calciumMgL: mgL(3.5 * 20.039),
      magnesiumMgL: mgL(0),
      alkalinityMgLCaCO3: mgL(50.043),
    });
    const magnesium = residualAlkalinity({
      calciumMgL: mgL(0),
      magnesiumMgL: mgL(7 * 12.1525),
      alkalinityMgLCaCO3: mgL(50.043),
    });
    expectWithin(calcium, 0, 1e-9);
    expectWithin(magnesium, 0, 1e-9);
  });

  it("refuses what no water holds", () => {
    const over = JSON.parse("10001") as ReturnType<typeof mgL>;
    expect(() => alkalinityFromBicarbonate(over)).toThrow("bicarbonate 10001 mg/L is outside 0 to 10000 mg/L");
    expect(() => bicarbonateFromAlkalinity(over)).toThrow(
      "alkalinity 10001 mg/L CaCO3 is outside 0 to 8000 mg/L CaCO3",
    );
    expect(() => hardness({ calciumMgL: over, magnesiumMgL: mgL(0) })).toThrow(
      "calcium 10001 mg/L is outside 0 to 1500 mg/L",
    );
    expect(() => residualAlkalinity({ calciumMgL: mgL(0), magnesiumMgL: mgL(0), alkalinityMgLCaCO3: over })).toThrow(
      "alkalinity 10001 mg/L CaCO3 is outside 0 to 10000 mg/L CaCO3",
    );
  });
});
