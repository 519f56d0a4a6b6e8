import { describe, expect, it } from "vitest";
import { extractMass, waterDensity, wortDensity } from "@/lib/calc/gravity";
import { celsius, degreesPlato, litres } from "@/lib/calc/units";
import { SUCROSE_20, SUCROSE_HOT, WATER_KELL, WATER_OTHERS } from "../../reference/gravity";
import { expectWithin } from "../../support/expect-within";

const wort = (plato: number, temperature: number): number =>
  wortDensity({ plato: degreesPlato(plato), celsius: celsius(temperature) });

describe("waterDensity", () => {
  it.each(WATER_KELL)("is $kgPerM3 kg/m³ at $celsius °C (Kell 1975)", (row) => {
    expectWithin(1000 * waterDensity(celsius(row.celsius)), row.kgPerM3, 0.002);
  });

  it.each(WATER_OTHERS)("is near $kgPerM3 kg/m³ at $celsius °C ($source)", (row) => {
    expectWithin(1000 * waterDensity(celsius(row.celsius)), row.kgPerM3, row.within);
  });

  it("is greatest at 4 °C", () => {
    const atFour = waterDensity(celsius(4));
    for (let t = 0; t <= 100; t += 1) expect(waterDensity(celsius(t))).toBeLessThanOrEqual(atFour);
  });

  it("refuses ice and steam", () => {
    expect(() => waterDensity(celsius(-0.1))).toThrow("temperature -0.1 °C is outside 0 to 100 °C");
    expect(() => waterDensity(celsius(100.1))).toThrow("temperature 100.1 °C is outside 0 to 100 °C");
  });
});

describe("wortDensity", () => {
  it.each(SUCROSE_20)("is $kgPerL kg/L for $plato °P at 20 °C ($source)", (row) => {
    expectWithin(wort(row.plato, 20), row.kgPerL, row.within);
  });

  it.each(SUCROSE_HOT)("is $kgPerM3 kg/m³ for $plato °P at $celsius °C (Bubník et al. 1995)", (row) => {
    // The two sources themselves differ by 0.08 kg/m³ at 30 °P and 20 °C.
    expectWithin(1000 * wort(row.plato, row.celsius), row.kgPerM3, 0.1);
  });

  it("is water where there is no extract", () => {
    for (let t = 0; t <= 100; t += 5) expect(wort(0, t)).toBe(waterDensity(celsius(t)));
  });

  it("rises with extract at every temperature and falls with temperature above 4 °C at every strength", () => {
    for (let plato = 1; plato <= 35; plato += 1) {
      for (let t = 5; t <= 100; t += 5) {
        expect(wort(plato, t)).toBeGreaterThan(wort(plato - 1, t));
        expect(wort(plato, t)).toBeLessThan(wort(plato, t - 1));
      }
    }
  });

  it("shrinks wort of 12 °P by 4 % from boiling to 20 °C, as water does (common practice, no source)", () => {
    expectWithin(1 - wort(12, 100) / wort(12, 20), 0.04, 0.0005);
  });

  it("is lighter than water for beer whose apparent extract is below zero, by the definition of apparent extract", () => {
    // SG 20/20 in air of −2 °P is 0.99231 by the ASBC cubic: 0.99231 × 0.997004 + 0.0012 kg/L in vacuum.
    expectWithin(wort(-2, 20), 0.99231 * 0.997004 + 0.0012, 2e-5);
    for (let t = 0; t <= 100; t += 10) expect(wort(-1, t)).toBeLessThan(waterDensity(celsius(t)));
  });

  it("refuses a syrup, a spirit and a temperature that wort never has", () => {
    expect(() => wort(35.1, 20)).toThrow("extract 35.1 °P is outside -9 to 35 °P");
    expect(() => wort(-9.05, 20)).toThrow("extract -9.05 °P is outside -9 to 35 °P");
    expect(() => wort(12, 101)).toThrow("temperature 101 °C is outside 0 to 100 °C");
  });

  it("refuses what is not a number", () => {
    expect(() => wortDensity({ plato: NaN, celsius: 20 } as never)).toThrow("extract NaN °P is outside -9 to 35 °P");
  });
});

describe("extractMass", () => {
  const mass = (volume: number, plato: number, temperature: number): number =>
    extractMass({ litres: litres(volume), plato: degreesPlato(plato), celsius: celsius(temperature) });

  it("weighs 20 L of 10 °P at 20 °C: 20 × 1.03812 × 0.1 kg (NBS Circular C440, worked by hand)", () => {
    expectWithin(mass(20, 10, 20), 2.07624, 1e-4);
  });

  it("does not change when the wort is heated and its volume grows with it", () => {
    const hot = (20 * wort(12, 20)) / wort(12, 80);
    expectWithin(mass(hot, 12, 80), mass(20, 12, 20), 1e-12);
  });

  it("refuses a negative volume", () => {
    expect(() => extractMass({ litres: -1, plato: 12, celsius: 20 } as never)).toThrow(
      "volume -1 L is outside 0 to 100000 L",
    );
  });

  it("refuses beer lighter than water, whose apparent extract weighs nothing", () => {
    expect(() => mass(20, -0.1, 20)).toThrow("extract -0.1 °P is outside 0 to 35 °P");
  });
});
