import { describe, expect, it } from "vitest";
import { wortDensity } from "@/lib/calc/gravity";
import { coolingShrinkage, volumeAtReference } from "@/lib/calc/kettle";
import { celsius, degreesPlato, litres } from "@/lib/calc/units";
import { expectWithin } from "../../support/expect-within";

/** Density of water, kg/m³, as the steam tables print it (IAPWS-95, 1 atm). */
const PRINTED = { 20: 998.21, 40: 992.22, 60: 983.2, 80: 971.79, 100: 958.35 } as const;
const WATER = degreesPlato(0);

describe("volumeAtReference", () => {
  it.each([40, 60, 80, 100] as const)("keeps the mass of 30 L of water read at %i °C, by printed densities", (at) => {
    const cold = volumeAtReference({ litres: litres(30), celsius: celsius(at), plato: WATER });
    expectWithin(cold, (30 * PRINTED[at]) / PRINTED[20], 30 * 2e-5);
  });

  it("leaves a volume at 20 °C as it is, whatever the vessel", () => {
    const cold = { litres: litres(23), celsius: celsius(20), plato: degreesPlato(12) };
    expect(volumeAtReference(cold)).toBe(23);
    expect(volumeAtReference({ ...cold, vessel: "copper" })).toBe(23);
  });

  it("adds what a steel kettle swells by: 3 × 17.3e-6 × 80 K = 0.4152 % at 100 °C", () => {
    const hot = { litres: litres(30), celsius: celsius(100), plato: WATER };
    expectWithin(volumeAtReference({ ...hot, vessel: "stainless steel" }) / volumeAtReference(hot), 1.004152, 1e-12);
  });

  it("keeps the mass of wort, and is what cooling shrinkage says from the other side", () => {
    const hot = { litres: litres(26), celsius: celsius(95), plato: degreesPlato(13) };
    const cold = volumeAtReference(hot);
    const density = (at: number): number => wortDensity({ plato: hot.plato, celsius: celsius(at) });
    expectWithin(cold * density(20), 26 * density(95), 1e-12);
    const shrinkage = coolingShrinkage({ plato: hot.plato, from: celsius(95), to: celsius(20) });
    expectWithin(cold, 26 * (1 - shrinkage), 1e-12);
  });

  it("refuses what is hotter than the densities reach, and volumes that are none", () => {
    const hot = { litres: litres(30), celsius: celsius(100.5), plato: WATER };
    expect(() => volumeAtReference(hot)).toThrow("temperature 100.5 °C is outside 0 to 100 °C");
    expect(() => volumeAtReference({ ...hot, celsius: celsius(20), litres: -1 as typeof hot.litres })).toThrow(
      "volume -1 L is outside",
    );
  });
});
