import { describe, expect, it } from "vitest";
import { blend, boilDownTo, diluteTo, extractMass, type BoilDown, type Dilution } from "@/lib/calc/gravity";
import { celsius, degreesPlato, litres } from "@/lib/calc/units";
import { expectWithin } from "../../support/expect-within";

const argument = (volume: number, plato: number, target: number): Parameters<typeof diluteTo>[0] => ({
  litres: litres(volume),
  plato: degreesPlato(plato),
  targetPlato: degreesPlato(target),
});

function diluted(volume: number, plato: number, target: number): Extract<Dilution, { ok: true }> {
  const result = diluteTo(argument(volume, plato, target));
  if (!result.ok) throw new Error(result.reason);
  return result;
}

function boiledDown(volume: number, plato: number, target: number): Extract<BoilDown, { ok: true }> {
  const result = boilDownTo(argument(volume, plato, target));
  if (!result.ok) throw new Error(result.reason);
  return result;
}

describe("diluteTo", () => {
  it("brings 20 L of 15 °P to 12 °P with 5.306 L of water (mass balance, by hand)", () => {
    // NBS Circular C440: 15 °P weighs 1.05914 kg/L, 12 °P 1.04643 kg/L. 21.183 kg × 15/12 = 26.479 kg; 5.296 kg of
    // water at 0.998204 kg/L are 5.305 L, and 26.479 / 1.04643 = 25.304 L.
    const { waterLitres, litres: volume } = diluted(20, 15, 12);
    expectWithin(waterLitres, 5.305, 0.002);
    expectWithin(volume, 25.304, 0.003);
  });

  it("adds 4 L to 20 L from 1.060 to 1.050, as points do to a percent (common practice, no source)", () => {
    // 60 × 20 / 50 − 20; 14.741 and 12.388 °P are these gravities by the ASBC cubic.
    expectWithin(diluted(20, 14.741, 12.388).waterLitres, 4, 0.04);
  });

  it("is undone by blending its water in", () => {
    const { waterLitres, litres: volume } = diluted(20, 17, 9);
    const mixed = blend([
      { litres: litres(20), plato: degreesPlato(17) },
      { litres: waterLitres, plato: degreesPlato(0) },
    ]);
    expectWithin(mixed.plato, 9, 1e-12);
    expectWithin(mixed.litres, volume, 1e-10);
  });

  it("adds nothing to a wort that has the strength already", () => {
    const { waterLitres, litres: volume } = diluted(20, 12, 12);
    expect(waterLitres).toBe(0);
    expectWithin(volume, 20, 1e-12);
  });

  it("has no answer for a wort that is weaker already", () => {
    expect(diluteTo(argument(20, 11.9, 12))).toEqual({ ok: false, reason: "weaker-than-target" });
  });

  it("refuses a target that is water, a wort that is syrup, and too much of it", () => {
    expect(() => diluteTo(argument(20, 12, 0.09))).toThrow("target extract 0.09 °P is outside 0.1 to 35 °P");
    expect(() => diluteTo(argument(20, 35.1, 12))).toThrow("extract 35.1 °P is outside 0 to 35 °P");
    expect(() => diluteTo(argument(20, -0.1, 12))).toThrow("extract -0.1 °P is outside 0 to 35 °P");
    expect(() => diluteTo(argument(50_001, 15, 12))).toThrow("volume 50001 L is outside 0 to 50000 L");
  });
});

describe("boilDownTo", () => {
  it("brings 25 L of 10 °P to 12 °P by 4.333 L of water (mass balance, by hand)", () => {
    // 25 L × 1.03812 kg/L × (1 − 10/12) = 4.3255 kg; over 0.998204 kg/L 4.333 L. 21.6275 kg over 1.04643 kg/L 20.668 L.
    const { evaporatedLitres, litres: volume } = boiledDown(25, 10, 12);
    expectWithin(evaporatedLitres, 4.333, 0.001);
    expectWithin(volume, 20.668, 0.001);
  });

  it("keeps the extract", () => {
    const at20 = celsius(20);
    const { litres: volume } = boiledDown(25, 10, 15);
    expectWithin(
      extractMass({ litres: volume, plato: degreesPlato(15), celsius: at20 }),
      extractMass({ litres: litres(25), plato: degreesPlato(10), celsius: at20 }),
      1e-12,
    );
  });

  it("is undone by diluting", () => {
    const { evaporatedLitres, litres: volume } = boiledDown(25, 10, 13);
    const back = diluted(volume, 13, 10);
    expectWithin(back.waterLitres, evaporatedLitres, 1e-10);
    expectWithin(back.litres, 25, 1e-10);
  });

  it("boils nothing off a wort that has the strength already", () => {
    expect(boiledDown(25, 12, 12).evaporatedLitres).toBe(0);
  });

  it("has no answer for a wort that is stronger already, nor for water", () => {
    expect(boilDownTo(argument(25, 12.1, 12))).toEqual({ ok: false, reason: "stronger-than-target" });
    expect(boilDownTo(argument(25, 0, 12))).toEqual({ ok: false, reason: "no-extract" });
  });

  it("refuses a target stronger than wort gets, and what is no wort", () => {
    expect(() => boilDownTo(argument(25, 12, 35.1))).toThrow("target extract 35.1 °P is outside 0.1 to 35 °P");
    expect(() => boilDownTo(argument(25, 36, 35))).toThrow("extract 36 °P is outside 0 to 35 °P");
    expect(() => boilDownTo(argument(50_001, 12, 15))).toThrow("volume 50001 L is outside 0 to 50000 L");
  });
});
