import { describe, expect, it } from "vitest";
import {
  blend,
  correctHydrometer,
  finalGravityFromBrix,
  originalPlatoFromBrix,
  platoAfterDilution,
  platoToSpecificGravity,
  pointsPerPoundGallonFromExtract,
  waterDensity,
  type WortVolume,
} from "@/lib/calc/gravity";
import { celsius, degreesBrix, degreesPlato, fraction, litres, specificGravity } from "@/lib/calc/units";
import { expectPrinted } from "../../support/expect-printed";
import { expectWithin } from "../../support/expect-within";

describe("correctHydrometer", () => {
  // Worked by hand: reading × water density ratio (Kell 1975) over the expansion of the glass, 25·10⁻⁶ per K.
  const rows = [
    { sg: 1.05, sample: 30, calibration: 20, corrected: "1.05243" },
    { sg: 1.01, sample: 25, calibration: 20, corrected: "1.01105" },
    { sg: 1.06, sample: 35, calibration: 140 / 9, corrected: "1.06480" },
  ];
  const correct = (sg: number, sample: number, calibration: number): number =>
    correctHydrometer({ sg: specificGravity(sg), sampleC: celsius(sample), calibrationC: celsius(calibration) });

  it.each(rows)("reads $sg at $sample °C as $corrected", ({ sg, sample, calibration, corrected }) => {
    expectWithin(correct(sg, sample, calibration), Number(corrected), 5e-5);
  });

  it("leaves a reading at the calibration temperature as it is", () => {
    expect(correct(1.048, 20, 20)).toBe(1.048);
  });

  it("reads water of any temperature as water, but for the glass", () => {
    const floating = (waterDensity(celsius(40)) / waterDensity(celsius(20))) * (1 + 25e-6 * 20);
    expectWithin(correct(floating, 40, 20), 1, 1e-12);
  });

  it("adds more the warmer the sample is", () => {
    const corrected = [10, 20, 30, 40, 50, 60].map((sample) => correct(1.05, sample, 20));
    expect(corrected).toEqual([...corrected].sort((a, b) => a - b));
  });

  it("refuses a sample that must be cooled first", () => {
    expect(() => correct(1.05, 70, 20)).toThrow("sample temperature 70 °C is outside 0 to 60 °C");
  });
});

describe("originalPlatoFromBrix", () => {
  const plato = (brix: number, correction: number): number =>
    originalPlatoFromBrix({ brix: degreesBrix(brix), correction });

  it("divides the reading by the factor of the instrument: 12.48 / 1.04 (by hand)", () => {
    expectPrinted(plato(12.48, 1.04), "12.000");
  });

  it("is the reading itself for sucrose", () => {
    expect(plato(17, 1)).toBe(17);
  });

  it("refuses a factor that no instrument has", () => {
    expect(() => plato(12, 0)).toThrow("wort correction 0 is outside 0.95 to 1.1");
  });
});

describe("finalGravityFromBrix", () => {
  // Terrill 2011, cubic, worked by hand.
  const rows = [
    { original: 12, final: 6, sg: 1.01168 },
    { original: 16, final: 8.4, sg: 1.01548 },
  ];
  const gravity = (original: number, final: number, correction = 1): number =>
    finalGravityFromBrix({ originalBrix: degreesBrix(original), finalBrix: degreesBrix(final), correction });

  it.each(rows)("is $sg from $original and $final °Bx (Terrill 2011)", ({ original, final, sg }) => {
    expectWithin(gravity(original, final), sg, 5e-5);
  });

  it("divides both readings by the factor of the instrument", () => {
    expectWithin(gravity(12 * 1.04, 6 * 1.04, 1.04), gravity(12, 6), 1e-12);
  });

  it("refuses a wort below the beers of the fit and a beer above its wort", () => {
    expect(() => gravity(7, 3)).toThrow("original reading 7 °Bx is outside 8 to 30 °Bx");
    expect(() => gravity(12, 12.5)).toThrow("final reading 12.5 °Bx is outside 0 to 12 °Bx");
  });
});

describe("pointsPerPoundGallonFromExtract", () => {
  const points = (extract: number): number => pointsPerPoundGallonFromExtract(fraction(extract));

  it("is 46.2 for sucrose: a pound made up to a US gallon at 20 °C (NBS Circular C440)", () => {
    expectPrinted(points(1), "46.2");
    // By the library's own gravity scale: 0.45359237 kg in 3.785411784 L is 11.43 °P, found by halving.
    let [low, high] = [0, 20];
    for (let i = 0; i < 60; i += 1) {
      const middle = (low + high) / 2;
      const density = platoToSpecificGravity(degreesPlato(middle)) * 0.997004 + 0.0012;
      if ((density * middle) / 100 < 0.45359237 / 3.785411784) low = middle;
      else high = middle;
    }
    expectPrinted(1000 * (platoToSpecificGravity(degreesPlato(low)) - 1), "46.2");
  });

  it("is in proportion to the extract", () => {
    expectWithin(points(0.8), 0.8 * points(1), 1e-12);
    expect(points(0)).toBe(0);
  });

  it("refuses more extract than mass", () => {
    expect(() => pointsPerPoundGallonFromExtract(1.1 as never)).toThrow("extract 1.1 is outside 0 to 1");
  });
});

describe("blend", () => {
  const wort = (volume: number, plato: number): WortVolume => ({ litres: litres(volume), plato: degreesPlato(plato) });

  it("gives 13.036 °P from equal volumes of 16 and 10 °P (mass balance, by hand)", () => {
    expectWithin(blend([wort(10, 16), wort(10, 10)]).plato, 13.036, 0.003);
  });

  it("leaves one wort as it is", () => {
    const { litres: volume, plato } = blend([wort(20, 12)]);
    expectWithin(volume, 20, 1e-12);
    expectWithin(plato, 12, 1e-12);
  });

  it("is dilution when one part is water", () => {
    const diluted = platoAfterDilution({ litres: litres(20), plato: degreesPlato(15), waterLitres: litres(4) });
    // 20 L × 1.05914 kg/L × 15 % over 21.183 kg + 3.993 kg (by hand).
    expectWithin(diluted, 12.621, 0.001);
    expect(diluted).toBe(blend([wort(20, 15), wort(4, 0)]).plato);
  });

  it("refuses to mix nothing", () => {
    expect(() => blend([])).toThrow("blended volume 0 L is outside 0.001 to 100000 L");
    expect(() => blend([wort(0, 12)])).toThrow("blended volume 0 L is outside 0.001 to 100000 L");
  });

  it("refuses more wort than a brewery has and beer among the worts", () => {
    expect(() => blend([wort(50_001, 12)])).toThrow("volume 50001 L is outside 0 to 50000 L");
    expect(() => blend([wort(10, -1)])).toThrow("extract -1 °P is outside 0 to 35 °P");
  });
});
