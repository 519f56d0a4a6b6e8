import { describe, expect, it } from "vitest";
import { chargeBalance } from "@/lib/calc/water";
import { expectWithin } from "../../support/expect-within";
import { waterOf } from "../../support/water-of";

describe("chargeBalance", () => {
  it("finds 6.067 against 5.818 mEq/L, 2.1 % off (Standard Methods 1030 E, worked by hand)", () => {
    const water = waterOf({ calcium: 80, magnesium: 12, sodium: 25, bicarbonate: 180, sulfate: 70, chloride: 50 });
    const { cations, anions, relativeError } = chargeBalance(water);
    expectWithin(cations, 6.067, 0.002);
    expectWithin(anions, 5.818, 0.002);
    expectWithin(100 * relativeError, 2.1, 0.02);
  });

  it("counts 100 mg/L calcium as 4.99 mEq/L (100 / 20.039)", () => {
    expectWithin(chargeBalance(waterOf({ calcium: 100 })).cations, 4.99, 0.002);
  });

  it("signs the error: all cations +1, all anions −1, pure water 0", () => {
    expect(chargeBalance(waterOf({ sodium: 23 })).relativeError).toBe(1);
    expect(chargeBalance(waterOf({ chloride: 35 })).relativeError).toBe(-1);
    expect(chargeBalance(waterOf({})).relativeError).toBe(0);
  });

  it("refuses a concentration below zero", () => {
    const wrong = { ...waterOf({}), ...(JSON.parse('{ "sulfate": -1 }') as object) };
    expect(() => chargeBalance(wrong)).toThrow("sulfate -1 mg/L is outside 0 to 10000 mg/L");
  });
});
