import { describe, expect, it } from "vitest";
import { attenuationShift, fermentability, starchConversion, type MashCurve } from "@/lib/calc/mash";
import { expectWithin } from "../../support/expect-within";

const rest = (celsius: number, minutes = 60): MashCurve => [
  [0, celsius],
  [minutes, celsius],
];
const limit = (curve: MashCurve): number => fermentability({ curve }).apparentLimit;

describe("attenuationShift", () => {
  it("is nothing for an hour at 66 °C, the mash it compares with, and has a point of scatter", () => {
    expect(attenuationShift({ curve: rest(66) })).toMatchObject({ ok: true, shift: 0, sd: 0.01 });
  });

  it("is the difference of the limits, and a quarter of it uncertain beside the scatter", () => {
    const found = attenuationShift({ curve: rest(70) });
    const shift = limit(rest(70)) - limit(rest(66));
    expect(found).toMatchObject({ ok: true, shift, converted: starchConversion({ curve: rest(70) }) });
    expectWithin(found.ok ? found.sd : NaN, Math.hypot(0.01, shift / 4), 1e-12);
  });

  it("takes off about two to three points for each kelvin from 66 to 70 °C (common practice, no source)", () => {
    const found = attenuationShift({ curve: rest(70) });
    expectWithin(found.ok ? found.shift : NaN, -0.1, 0.03);
  });

  it("speaks of no wort where the starch stays starch", () => {
    const curve = rest(50);
    expect(attenuationShift({ curve })).toEqual({
      ok: false,
      reason: "starch-not-converted",
      converted: starchConversion({ curve }),
    });
  });

  it("starts to speak of wort where half of the starch is converted", () => {
    const curves = Array.from({ length: 61 }, (_, i) => rest(57 + i * 0.05));
    for (const curve of curves) expect(attenuationShift({ curve }).ok).toBe(starchConversion({ curve }) >= 0.5);
    expect(new Set(curves.map((curve) => attenuationShift({ curve }).ok)).size).toBe(2);
  });
});
