import { describe, expect, it } from "vitest";
import { fermentedShare } from "@/lib/calc/fermentation";
import { degreesPlato } from "@/lib/calc/units";
import { expectWithin } from "../../support/expect-within";

const share = (original: number, now: number, final: number): number =>
  fermentedShare({
    originalPlato: degreesPlato(original),
    nowPlato: degreesPlato(now),
    finalPlato: degreesPlato(final),
  });

describe("fermentedShare", () => {
  it("is eight ninths at 4 °P on the way from 12 to 3 °P (by hand)", () => {
    expectWithin(share(12, 4, 3), 8 / 9, 1e-12);
  });

  it("does not depend on the scale: twice the extracts are the same share", () => {
    expectWithin(share(12, 4, 3), share(24, 8, 6), 1e-12);
  });

  it("stays within nothing and all, where a reading scatters around start and end", () => {
    expect(share(12, 12.3, 3)).toBe(0);
    expect(share(12, 2.8, 3)).toBe(1);
    expect(share(12, 12, 3)).toBe(0);
    expect(share(12, 3, 3)).toBe(1);
  });

  it("takes an end lighter than water", () => {
    expectWithin(share(10, 0, -1), 10 / 11, 1e-12);
  });

  it("refuses a fall too short to have parts, and an end that no beer reaches", () => {
    expect(() => share(12, 11.9, 11.6)).toThrow("final extract 11.6 °P is outside");
    expect(() => share(12, 4, -3)).toThrow("final extract -3 °P is outside");
    expect(() => share(0.5, 0.4, 0)).toThrow("original extract 0.5 °P is outside 1 to 35 °P");
  });
});
