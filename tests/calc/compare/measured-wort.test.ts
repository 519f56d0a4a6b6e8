import { describe, expect, it } from "vitest";
import { residualExtractKg } from "@/lib/calc/compare/measured-wort";
import { expectPrinted } from "../../support/expect-printed";

const WORT = { kg: 20, extractKg: 2.4 };

describe("the extract that yeast leaves of a wort", () => {
  it("is what Balling's relations give, by hand", () => {
    // Real extract 0.1808 × 12 + 0.8192 × 3 = 4.6272 %, alcohol (12 − 4.6272) / (2.0665 − 0.010665 × 12) = 3.8033 %.
    // 100 kg of such beer were 100 + (0.9565 + 0.11) × 3.8033 kg of wort, so 20 kg became 19.2204 kg.
    expectPrinted(residualExtractKg(WORT, { originalPlato: 12, finalPlato: 3 }) ?? NaN, "0.8894");
  });

  it("is all of it where nothing has fermented", () => {
    expect(residualExtractKg(WORT, { originalPlato: 12, finalPlato: 12 })).toBeCloseTo(WORT.extractKg, 12);
  });

  it("with what became alcohol, carbon dioxide and yeast is what there was (conservation of mass)", () => {
    const left = residualExtractKg(WORT, { originalPlato: 12, finalPlato: 3 }) ?? NaN;
    // Of 2.0665 g of extract 1 g becomes alcohol, 0.9565 g carbon dioxide and 0.11 g yeast (Balling).
    const alcoholKg = (WORT.extractKg - left) / 2.0665;
    const beerKg = WORT.kg - (0.9565 + 0.11) * alcoholKg;
    expect(left / beerKg).toBeCloseTo(0.046272, 4);
  });
});
