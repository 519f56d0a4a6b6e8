import { describe, expect, it } from "vitest";
import { gristExtract, mashVolume } from "@/lib/calc/mash";
import { fraction, kilograms, litres } from "@/lib/calc/units";
import { expectWithin } from "../../support/expect-within";

describe("gristExtract", () => {
  it("takes the moisture off before the yield: 80 % of 96 % of 10 kg is 7.68 kg (definition)", () => {
    const found = gristExtract({ kg: kilograms(10), extract: fraction(0.8), moisture: fraction(0.04) });
    expectWithin(found, 7.68, 1e-12);
  });

  it("gives nothing from water alone", () => {
    expect(gristExtract({ kg: kilograms(1), extract: fraction(1), moisture: fraction(1) })).toBe(0);
  });

  it("refuses a yield given in per cent", () => {
    const percent = JSON.parse("80") as ReturnType<typeof fraction>;
    expect(() => gristExtract({ kg: kilograms(1), extract: percent, moisture: fraction(0) })).toThrow(
      "extract of the dry substance 80 is outside 0 to 1",
    );
  });

  it("refuses a mass and a moisture that cannot be", () => {
    const wrong = (changes: object) => () =>
      gristExtract({ kg: kilograms(1), extract: fraction(0.8), moisture: fraction(0), ...changes });
    expect(wrong({ kg: -1 })).toThrow("fermentable -1 kg is outside 0 to 100000 kg");
    expect(wrong({ kg: 100001 })).toThrow("fermentable 100001 kg is outside 0 to 100000 kg");
    expect(wrong({ moisture: 1.1 })).toThrow("moisture 1.1 is outside 0 to 1");
  });
});

describe("mashVolume", () => {
  it("adds 3.35 L for 5 kg of grain (common practice, 0.67 L/kg)", () => {
    expectWithin(mashVolume({ water: litres(0), grist: kilograms(5) }), 3.35, 0.001);
  });

  it("agrees with 0.08 US gallons a pound (common practice)", () => {
    const litresPerKg = (0.08 * 3.785411784) / 0.45359237;
    expectWithin(mashVolume({ water: litres(0), grist: kilograms(1) }), litresPerKg, 0.003);
  });

  it("refuses water and grist that cannot be", () => {
    const wrong = (changes: object) => () => mashVolume({ water: litres(10), grist: kilograms(3), ...changes });
    expect(wrong({ water: -1 })).toThrow("mash water -1 L is outside 0 to 100000 L");
    expect(wrong({ grist: NaN })).toThrow("grist NaN kg is outside 0 to 100000 kg");
  });
});
