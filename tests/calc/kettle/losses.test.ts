import { describe, expect, it } from "vitest";
import { headspace, hopAbsorption, hotBreakAndTrubLoss } from "@/lib/calc/kettle";
import { celsius, degreesPlato, kilograms, litres, litresPerKilogram, squareMetres } from "@/lib/calc/units";
import { expectWithin } from "../../support/expect-within";

const TRUB = { wort: litres(20), bottomM2: squareMetres(0.1), whirlpool: true, falseBottom: false };

describe("hotBreakAndTrubLoss", () => {
  it.each([
    { whirlpool: true, falseBottom: false, stranded: 0.5 },
    { whirlpool: false, falseBottom: false, stranded: 1.5 },
    { whirlpool: true, falseBottom: true, stranded: 2.7 },
    { whirlpool: false, falseBottom: true, stranded: 2.7 },
  ])("strands $stranded L over 0.1 m² (5, 15 and 12 mm more, common practice, no source)", ({ stranded, ...a }) => {
    const found = hotBreakAndTrubLoss({ ...TRUB, ...a });
    expectWithin(found.strandedLitres, stranded, 1e-12);
    expectWithin(found.breakLitres, 20 * 0.003, 1e-12);
    expectWithin(found.litres, stranded + 0.06, 1e-12);
  });

  it("never keeps more wort than there is", () => {
    expect(hotBreakAndTrubLoss({ ...TRUB, wort: litres(0.3) }).litres).toBe(0.3);
    expect(hotBreakAndTrubLoss({ ...TRUB, wort: litres(0) }).litres).toBe(0);
  });

  it("grows with the wort and with the bottom", () => {
    const plain = hotBreakAndTrubLoss(TRUB).litres;
    expect(hotBreakAndTrubLoss({ ...TRUB, wort: litres(30) }).litres).toBeGreaterThan(plain);
    expect(hotBreakAndTrubLoss({ ...TRUB, bottomM2: squareMetres(0.11) }).litres).toBeGreaterThan(plain);
  });

  it.each([
    [{ wort: -1 }, "wort -1 L is outside 0 to 100000 L"],
    [{ wort: NaN }, "wort NaN L is outside 0 to 100000 L"],
    [{ bottomM2: 101 }, "bottom of the kettle 101 m² is outside 0 to 100 m²"],
  ])("refuses %j", (changes, message) => {
    expect(() => hotBreakAndTrubLoss({ ...TRUB, ...(changes as object) })).toThrow(message);
  });
});

describe("hopAbsorption", () => {
  const HOPS = { pelletsKg: kilograms(0.1), conesKg: kilograms(0.05) };

  it("is 6 L/kg of pellets and 10 L/kg of cones: 0.6 + 0.5 L (common practice, no source)", () => {
    expectWithin(hopAbsorption(HOPS), 1.1, 1e-12);
    expectWithin(hopAbsorption({ ...HOPS, conesKg: kilograms(0) }), 0.6, 1e-12);
  });

  it("takes a learned figure for both: 0.15 kg at 4 L/kg", () => {
    expectWithin(hopAbsorption({ ...HOPS, learned: litresPerKilogram(4) }), 0.6, 1e-12);
  });

  it.each([
    [{ pelletsKg: -0.1 }, "pellets -0.1 kg is outside 0 to 100000 kg"],
    [{ conesKg: NaN }, "whole hops NaN kg is outside 0 to 100000 kg"],
    [{ learned: 21 }, "absorption 21 L/kg is outside 0 to 20 L/kg"],
    [{ pelletsKg: 20000 }, "wort in the hops 120000.5 L is outside 0 to 100000 L"],
  ])("refuses %j", (changes, message) => {
    expect(() => hopAbsorption({ ...HOPS, ...(changes as object) })).toThrow(message);
  });
});

describe("headspace", () => {
  const WATER = { capacity: litres(40), wort: litres(30), plato: degreesPlato(0), celsius: celsius(100) };
  /** Kell 1975: 998.204 and 958.345 kg/m³. */
  const SWELLING = 998.204 / 958.345;

  it("swells water by 4.16 % to the boil and keeps 4.8 of 40 L for foam (Kell 1975; common practice)", () => {
    const found = headspace(WATER);
    if (!found.ok) throw new Error(found.reason);
    expectWithin(found.hotLitres, 30 * SWELLING, 0.001);
    expectWithin(found.spareLitres, 35.2 - 30 * SWELLING, 0.001);
    expectWithin(found.mostWort, 35.2 / SWELLING, 0.001);
  });

  it("says by how much it boils over, and fits just what it says fits", () => {
    const over = headspace({ ...WATER, wort: litres(35) });
    expect(over).toMatchObject({ ok: false, reason: "boils-over" });
    expectWithin(over.ok ? NaN : over.overLitres, 35 * SWELLING - 35.2, 0.001);
    expect(headspace({ ...WATER, wort: litres(over.mostWort - 1e-9) }).ok).toBe(true);
    expect(headspace({ ...WATER, wort: litres(over.mostWort + 1e-9) }).ok).toBe(false);
  });

  it("takes a stated room for foam instead, down to none", () => {
    const found = headspace({ ...WATER, foam: litres(0), celsius: celsius(20) });
    expect(found).toMatchObject({ ok: true, hotLitres: 30, spareLitres: 10, mostWort: 40 });
  });

  it.each([
    [{ capacity: 0 }, "kettle 0 L is outside 0.1 to 100000 L"],
    [{ wort: -1 }, "wort -1 L is outside 0 to 100000 L"],
    [{ foam: 41 }, "room for foam 41 L is outside 0 to 40 L"],
    [{ celsius: 19 }, "temperature 19 °C is outside 20 to 100 °C"],
    [{ celsius: 101 }, "temperature 101 °C is outside 20 to 100 °C"],
    [{ plato: 36 }, "extract 36 °P is outside"],
  ])("refuses %j", (changes, message) => {
    expect(() => headspace({ ...WATER, ...(changes as object) })).toThrow(message);
  });
});
