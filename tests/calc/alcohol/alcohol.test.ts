import { describe, expect, it } from "vitest";
import {
  alcoholByVolume,
  alcoholByVolumeLinear,
  alcoholByWeight,
  apparentAttenuation,
  energyPerLitre,
  realAttenuation,
  realExtract,
  type Extracts,
} from "@/lib/calc/alcohol";
import { specificGravityToPlato } from "@/lib/calc/gravity";
import { degreesPlato, specificGravity } from "@/lib/calc/units";
import { BALLING } from "../../reference/alcohol";
import { expectWithin } from "../../support/expect-within";

const extracts = (original: number, apparent: number): Extracts => ({
  originalPlato: degreesPlato(original),
  apparentPlato: degreesPlato(apparent),
});

const ofGravities = (originalSg: number, finalSg: number): Extracts => ({
  originalPlato: specificGravityToPlato(specificGravity(originalSg)),
  apparentPlato: specificGravityToPlato(specificGravity(finalSg)),
});

describe("Balling's equations", () => {
  it.each(BALLING)("leave $realExtract °P of $original °P at an apparent $apparent °P (by hand)", (row) => {
    expectWithin(realExtract(extracts(row.original, row.apparent)), row.realExtract, 0.002);
  });

  it.each(BALLING)("make $byWeight % by mass from $original and $apparent °P (by hand)", (row) => {
    expectWithin(alcoholByWeight(extracts(row.original, row.apparent)), row.byWeight, 0.003);
  });

  it.each(BALLING)("make $byVolume % by volume from $original and $apparent °P (by hand)", (row) => {
    expectWithin(alcoholByVolume(extracts(row.original, row.apparent)), row.byVolume, 0.01);
  });

  it("give the original extract back from alcohol and real extract (Balling 1865)", () => {
    for (const [original, apparent] of [
      [12, 3],
      [20, 5],
      [8, 1],
      [30, 9],
    ] as const) {
      const alcohol = alcoholByWeight(extracts(original, apparent));
      const real = realExtract(extracts(original, apparent));
      expectWithin((100 * (2.0665 * alcohol + real)) / (100 + 1.0665 * alcohol), original, 1e-9);
    }
  });

  it("find no alcohol in wort", () => {
    expect(alcoholByVolume(extracts(12, 12))).toBe(0);
    expectWithin(realExtract(extracts(12, 12)), 12, 1e-12);
  });

  it("find more alcohol the further the beer has fermented", () => {
    const byApparent = Array.from({ length: 25 }, (_, i) => alcoholByVolume(extracts(12, 12 - i / 2)));
    expect(byApparent).toEqual([...byApparent].sort((a, b) => a - b));
  });

  it("refuse a beer above its wort and a wort that is none", () => {
    expect(() => realExtract(extracts(12, 13))).toThrow(/^apparent extract 13 °P is outside -2\.648\d+ to 12 °P$/);
    expect(() => alcoholByVolume(extracts(36, 5))).toThrow("original extract 36 °P is outside 0 to 35 °P");
    expect(() => alcoholByWeight({ originalPlato: 12, apparentPlato: NaN } as never)).toThrow(
      "apparent extract NaN °P is outside -2.648",
    );
  });
});

describe("attenuation", () => {
  it("is 75 % apparent and 61.44 % real from 12 to 3 °P (Balling, by hand)", () => {
    expect(apparentAttenuation(extracts(12, 3))).toBe(0.75);
    expectWithin(realAttenuation(extracts(12, 3)), 0.6144, 0.0002);
  });

  it("is real in a fixed proportion to the apparent one", () => {
    for (const apparent of [0, 2, 6, 10]) {
      const beer = extracts(12, apparent);
      expectWithin(realAttenuation(beer), 0.8192 * apparentAttenuation(beer), 1e-12);
    }
  });

  it("is nothing in wort", () => {
    expect(realAttenuation(extracts(13.7, 13.7))).toBe(0);
  });

  it("refuses water, which has nothing to attenuate", () => {
    expect(() => apparentAttenuation(extracts(0, 0))).toThrow("original extract 0 °P is outside 0.1 to 35 °P");
    expect(() => realAttenuation(extracts(0, 0))).toThrow("original extract 0 °P is outside 0.1 to 35 °P");
  });
});

describe("alcoholByVolumeLinear", () => {
  const linear = (originalSg: number, finalSg: number): number =>
    alcoholByVolumeLinear({ originalSg: specificGravity(originalSg), finalSg: specificGravity(finalSg) });

  it("is 131.25 times the drop (common practice, no source)", () => {
    expectWithin(linear(1.05, 1.01), 5.25, 0.001);
    expectWithin(linear(1.048, 1.012), 4.725, 0.001);
    expect(linear(1.05, 1.05)).toBe(0);
  });

  it("falls behind Balling in strong beer", () => {
    expect(linear(1.1, 1.025)).toBeLessThan(alcoholByVolume(ofGravities(1.1, 1.025)));
  });

  it("refuses a beer above its wort", () => {
    expect(() => linear(1.01, 1.05)).toThrow("final gravity 1.05 SG is outside 0.96 to 1.01 SG");
  });
});

describe("energyPerLitre", () => {
  it("is 461.2 kcal in a litre from 1.050 to 1.010 (ASBC Beer-33, by hand)", () => {
    expectWithin(energyPerLitre(ofGravities(1.05, 1.01)), 461.2, 1.5);
  });

  it("is 163.7 kcal in 12 US fl oz of the same beer (ASBC Beer-33, by hand)", () => {
    expectWithin(energyPerLitre(ofGravities(1.05, 1.01)) * 0.35488, 163.7, 0.6);
  });

  it("is nothing in water", () => {
    expect(energyPerLitre(extracts(0, 0))).toBe(0);
  });

  it("refuses a beer above its wort", () => {
    expect(() => energyPerLitre(extracts(3, 12))).toThrow(/^apparent extract 12 °P is outside -0\.66\d+ to 3 °P$/);
  });
});
