import { describe, expect, it } from "vitest";
import {
  alcoholByVolume,
  alcoholByVolumeFromWeight,
  alcoholByWeight,
  apparentAttenuation,
  apparentRange,
  energyPerLitre,
  ethanolDensity,
  originalPlatoFromBeer,
  realAttenuation,
  realExtract,
  type Extracts,
} from "@/lib/calc/alcohol";
import { degreesPlato, percent } from "@/lib/calc/units";
import { ETHANOL_BY_VOLUME, ETHANOL_DENSITY } from "../../reference/alcohol";
import { expectWithin } from "../../support/expect-within";

/** Mass share of an alcohol by volume, by halving. */
function massPercent(volumePercent: number): number {
  let [low, high] = [0, 100];
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    if (alcoholByVolumeFromWeight(percent(middle)) < volumePercent) low = middle;
    else high = middle;
  }
  return low;
}

describe("ethanolDensity", () => {
  it.each(ETHANOL_DENSITY)("is $kgPerM3 kg/m³ at $volumePercent % by volume (OIML R 22, table)", (row) => {
    expectWithin(1000 * ethanolDensity(percent(massPercent(row.volumePercent))), row.kgPerM3, 0.011);
  });

  it("runs from water, 998.20 kg/m³, to ethanol, 789.24 kg/m³ (OIML R 22)", () => {
    expectWithin(1000 * ethanolDensity(percent(0)), 998.201, 0.001);
    expectWithin(1000 * ethanolDensity(percent(100)), 789.24, 0.01);
  });

  it("refuses more than everything", () => {
    expect(() => ethanolDensity(100.1 as never)).toThrow("alcohol by weight 100.1 % is outside 0 to 100 %");
    expect(() => ethanolDensity(-0.1 as never)).toThrow("alcohol by weight -0.1 % is outside 0 to 100 %");
  });
});

describe("alcoholByVolumeFromWeight", () => {
  it.each(ETHANOL_BY_VOLUME)("is $volumePercent % for $massPercent % of the mass (OIML R 22, by hand)", (row) => {
    expectWithin(alcoholByVolumeFromWeight(percent(row.massPercent)), row.volumePercent, 0.003);
  });

  it("ends at 100 % and starts from nothing", () => {
    expectWithin(alcoholByVolumeFromWeight(percent(100)), 100, 0.002);
    expect(alcoholByVolumeFromWeight(percent(0))).toBe(0);
  });

  it("refuses more than everything", () => {
    expect(() => alcoholByVolumeFromWeight(101 as never)).toThrow("alcohol by weight 101 % is outside 0 to 100 %");
  });
});

describe("originalPlatoFromBeer", () => {
  const original = (alcohol: number, real: number): number =>
    originalPlatoFromBeer({ alcoholByWeight: percent(alcohol), realExtract: degreesPlato(real) });

  it("is 12.00 °P for 3.8034 % alcohol and 4.6272 °P real extract (Balling, closure of 12 to 3 °P by hand)", () => {
    expectWithin(original(3.8034, 4.6272), 12, 0.003);
  });

  it("undoes Balling's alcohol and real extract for beer above and below the density of water", () => {
    for (const [originalPlato, apparentPlato] of [
      [12, 3],
      [8, -1.5],
      [25, -4],
      [16, 16],
    ] as const) {
      const beer = { originalPlato: degreesPlato(originalPlato), apparentPlato: degreesPlato(apparentPlato) };
      expectWithin(original(alcoholByWeight(beer), realExtract(beer)), originalPlato, 1e-9);
    }
  });

  it("is the extract itself where there is no alcohol", () => {
    expect(original(0, 11.5)).toBe(11.5);
  });

  it("refuses spirits and syrups", () => {
    expect(() => original(17.1, 3)).toThrow("alcohol by weight 17.1 % is outside 0 to 17 %");
    expect(() => original(4, 25.1)).toThrow("real extract 25.1 °P is outside 0 to 25 °P");
    expect(() => original(4, -0.1)).toThrow("real extract -0.1 °P is outside 0 to 25 °P");
  });
});

describe("beer lighter than water", () => {
  const beer = (original: number, apparent: number): Extracts => ({
    originalPlato: degreesPlato(original),
    apparentPlato: degreesPlato(apparent),
  });

  it("has 4.598 % alcohol by mass and 5.793 % by volume from 10 to −1 °P (Balling, by hand)", () => {
    // By hand: real extract 1.808 − 0.8192 = 0.9888 °P; (10 − 0.9888) / (2.0665 − 0.10665) = 4.5979 % by mass; gravity of
    // −1 °P is 0.99614 by the ASBC cubic; 4.5979 × 0.99614 / 0.7907 = 5.7926 % by volume.
    expectWithin(realExtract(beer(10, -1)), 0.9888, 1e-9);
    expectWithin(alcoholByWeight(beer(10, -1)), 4.5979, 0.0001);
    expectWithin(alcoholByVolume(beer(10, -1)), 5.7926, 0.0005);
  });

  it("is attenuated by more than the whole apparently, and by less really", () => {
    expectWithin(apparentAttenuation(beer(10, -1)), 1.1, 1e-12);
    expectWithin(realAttenuation(beer(10, -1)), 0.8192 * 1.1, 1e-12);
  });

  it("has the energy of its alcohol and extract: 10 × (6.9 × 4.5979 + 4 × 0.8888) × 0.99614 (by hand)", () => {
    expectWithin(energyPerLitre(beer(10, -1)), 351.45, 0.05);
  });

  it("ends where nothing real is left, as light as alcohol and water of that strength (OIML R 22)", () => {
    const dry = beer(12, 12 * (1 - 1 / 0.8192));
    expectWithin(realExtract(dry), 0, 1e-12);
    // Balling and the alcohol tables are different measurements; they agree within 0.1 % by volume.
    expectWithin(alcoholByVolume(dry), alcoholByVolumeFromWeight(alcoholByWeight(dry)), 0.1);
  });

  it("is refused when it would hold less than nothing", () => {
    expect(() => realExtract(beer(12, -2.65))).toThrow(/^apparent extract -2\.65 °P is outside -2\.648\d+ to 12 °P$/);
    expect(() => apparentAttenuation(beer(12, -2.65))).toThrow("apparent extract -2.65 °P");
    expect(() => energyPerLitre(beer(12, -2.65))).toThrow("apparent extract -2.65 °P");
  });
});

describe("apparentRange", () => {
  it("runs from −2.6484 to 12 °P for wort of 12 °P: 12 × (1 − 1/0.8192) (by hand)", () => {
    const { unit, min, max } = apparentRange(12);
    expectWithin(min, -2.6484, 0.0001);
    expect([unit, max]).toEqual(["°P", 12]);
  });

  it("refuses a syrup", () => {
    expect(() => apparentRange(35.1)).toThrow("original extract 35.1 °P is outside 0 to 35 °P");
    expect(() => apparentRange(-0.1)).toThrow("original extract -0.1 °P is outside 0 to 35 °P");
  });
});
