import { describe, expect, it } from "vitest";
import { realExtract } from "@/lib/calc/alcohol";
import { apparentAttenuationOf, predictedFinalPlato, type FermentablePart } from "@/lib/calc/fermentation";
import { degreesPlato } from "@/lib/calc/units";
import { expectWithin } from "../../support/expect-within";

const final = (original: number, parts: readonly FermentablePart[]): number =>
  predictedFinalPlato({ originalPlato: degreesPlato(original), parts });

describe("predictedFinalPlato", () => {
  it("is 3 °P from 12 °P of malt at 75 % (definition of attenuation)", () => {
    expectWithin(final(12, [{ share: 1, attenuation: 0.75 }]), 3, 1e-12);
  });

  it("leaves as much real extract as each part would leave alone (mass balance, Balling)", () => {
    // Wholly fermentable sugar attenuates 1/0.8192 apparently, so that its real extract is nothing.
    const parts = [
      { share: 0.85, attenuation: 0.75 },
      { share: 0.15, attenuation: 1 / 0.8192 },
    ];
    const apparentPlato = degreesPlato(final(14, parts));
    const left = realExtract({ originalPlato: degreesPlato(14), apparentPlato });
    const maltAlone = 0.85 * 14 * (1 - 0.8192 * 0.75);
    expectWithin(left, maltAlone, 1e-9);
  });

  it("does not depend on how one part is divided", () => {
    const whole = final(12, [{ share: 1, attenuation: 0.77 }]);
    const divided = final(12, [
      { share: 0.3, attenuation: 0.77 },
      { share: 0.7, attenuation: 0.77 },
    ]);
    expectWithin(divided, whole, 1e-12);
  });

  it("falls as sugar takes the place of malt", () => {
    const byShare = Array.from({ length: 11 }, (_, i) =>
      final(12, [
        { share: 1 - i / 20, attenuation: 0.75 },
        { share: i / 20, attenuation: 1.22 },
      ]),
    );
    expect(byShare).toEqual([...byShare].sort((a, b) => b - a));
  });

  it("ends below 0 °P where the beer is lighter than water: 12 × (1 − 1.22) (by hand)", () => {
    expectWithin(final(12, [{ share: 1, attenuation: 1.22 }]), -2.64, 1e-12);
  });

  it("leaves nothing real of plain sugar, whatever the shares add up to in the last digit", () => {
    const parts = [
      { share: 0.5000004, attenuation: 1 / 0.8192 },
      { share: 0.5000004, attenuation: 1 / 0.8192 },
    ];
    expect(apparentAttenuationOf(parts)).toBe(1 / 0.8192);
    for (const original of [0.1, 5, 12, 35]) {
      const apparentPlato = degreesPlato(final(original, parts));
      expectWithin(realExtract({ originalPlato: degreesPlato(original), apparentPlato }), 0, 1e-12);
    }
  });

  it("refuses a wort stronger than 35 °P", () => {
    expect(final(35, [{ share: 1, attenuation: 0.6 }])).toBeCloseTo(14, 9);
    expect(() => final(35.1, [{ share: 1, attenuation: 0.6 }])).toThrow(
      "original extract 35.1 °P is outside 0 to 35 °P",
    );
  });

  it("refuses shares that are not the whole wort", () => {
    expect(() => final(12, [{ share: 0.9, attenuation: 0.75 }])).toThrow("sum of the shares 0.9 is outside 0.999999");
    expect(() => final(12, [])).toThrow("sum of the shares 0 is outside 0.999999");
  });

  it("refuses more attenuation than pure sugar has", () => {
    expect(() => apparentAttenuationOf([{ share: 1, attenuation: 1.23 }])).toThrow(
      "attenuation 1.23 is outside 0 to 1.2207",
    );
    expect(() => apparentAttenuationOf([{ share: 1, attenuation: -0.01 }])).toThrow("attenuation -0.01 is outside 0");
    expect(() => apparentAttenuationOf([{ share: 1.1, attenuation: 0.7 }])).toThrow(
      "share of the extract 1.1 is outside 0 to 1",
    );
  });
});
