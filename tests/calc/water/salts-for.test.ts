import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fraction, grams, gramsPerLitre, litres } from "@/lib/calc/units";
import { IONS, MOST_OF_SALT, SALTS, dilutionFor, ionsFromSalts, saltsFor } from "@/lib/calc/water";
import type { Ion, Ions, Salt, SaltGrams, SaltsFor, WaterWish } from "@/lib/calc/water";
import { expectPrinted } from "../../support/expect-printed";
import { expectWithin } from "../../support/expect-within";
import { waterOf } from "../../support/water-of";

const PURE = waterOf({});
const TAP = waterOf({ calcium: 80, magnesium: 12, sodium: 25, bicarbonate: 180, sulfate: 70, chloride: 50 });
const INDEPENDENT = ["gypsum", "calciumChlorideDihydrate", "epsomSalt", "tableSalt", "bakingSoda"] as const;

// mg in a milliequivalent, IUPAC 2021.
const EQUIVALENT: Readonly<Record<Ion, number>> = {
  calcium: 20.039,
  magnesium: 12.1525,
  sodium: 22.99,
  sulfate: 48.028,
  chloride: 35.45,
  bicarbonate: 61.016,
};

const wish = (changed: Partial<WaterWish>): SaltsFor =>
  saltsFor({ source: PURE, target: PURE, litres: litres(20), mostDemineralised: fraction(0), ...changed });

describe("saltsFor", () => {
  it("finds the 4 g of gypsum that a target was made with (1 g in 20 L gives 11.64 mg/L calcium)", () => {
    const found = wish({ target: waterOf({ calcium: 46.557, sulfate: 111.587 }) });
    expect(found.ok).toBe(true);
    expectPrinted(found.grams.gypsum ?? NaN, "4.00");
    expectPrinted(found.ions.calcium, "46.6");
    for (const salt of ["calciumChlorideDihydrate", "epsomSalt", "tableSalt", "bakingSoda", "slakedLime"] as const) {
      expectWithin(found.grams[salt] ?? NaN, 0, 0.001);
    }
    expect(found.grams.chalk).toBeUndefined();
    expect(found.demineralised).toBe(0);
  });

  it("asks for nothing where the source is the target", () => {
    const found = wish({ source: TAP, target: TAP, mostDemineralised: fraction(1) });
    expect(found).toMatchObject({ ok: true, demineralised: 0 });
    expectWithin(
      Object.values(found.grams).reduce((sum, mass) => sum + mass, 0),
      0,
      1e-9,
    );
  });

  it("finds back any recipe of salts that do not stand in for each other", () => {
    const mass = fc.double({ min: 0, max: 10, noNaN: true });
    fc.assert(
      fc.property(fc.tuple(mass, mass, mass, mass, mass), (masses) => {
        const recipe: SaltGrams = Object.fromEntries(INDEPENDENT.map((salt, i) => [salt, grams(masses[i] ?? 0)]));
        const target = ionsFromSalts({ litres: litres(20), grams: recipe });
        const found = wish({ target, allowed: INDEPENDENT });
        expect(found.ok).toBe(true);
        for (const salt of INDEPENDENT) expectWithin(found.grams[salt] ?? NaN, recipe[salt] ?? NaN, 1e-7);
      }),
      { numRuns: 200 },
    );
  });

  it("cannot take ions out with salts, and says which is furthest off", () => {
    const found = wish({ source: TAP, target: { ...TAP, bicarbonate: waterOf({ bicarbonate: 60 }).bicarbonate } });
    expect(found).toMatchObject({ ok: false, reason: "target-not-met", furthest: "bicarbonate", demineralised: 0 });
    expectWithin(found.residual.bicarbonate, 120, 1e-9);
    expectWithin(found.residual.calcium, 0, 1e-9);
  });

  it("dilutes as little as brings every ion under the target, and makes up the rest", () => {
    // Half of the tap water and the salts below; bicarbonate, 90 of 180, is what decides.
    const half = waterOf({ calcium: 40, magnesium: 6, sodium: 12.5, bicarbonate: 90, sulfate: 35, chloride: 25 });
    const added = ionsFromSalts({ litres: litres(20), grams: { gypsum: grams(3), tableSalt: grams(1) } });
    const target = waterOf(Object.fromEntries(IONS.map((ion) => [ion, half[ion] + added[ion]])));
    const found = wish({ source: TAP, target, mostDemineralised: fraction(1) });
    expect(found.ok).toBe(true);
    expectWithin(found.demineralised, 0.5, 1e-12);
    expectPrinted(found.ions.sulfate, (35 + added.sulfate).toFixed(3));
    // Only a quarter may be replaced: bicarbonate stays at 135.
    const less = wish({ source: TAP, target, mostDemineralised: fraction(0.25) });
    expect(less).toMatchObject({ ok: false, furthest: "bicarbonate" });
    expectWithin(less.demineralised, 0.25, 1e-12);
    expectWithin(less.residual.bicarbonate, 45, 1e-9);
  });

  it("dilutes more than that where the salts at hand ask for it", () => {
    // A quarter brings calcium from 40 to 30. But gypsum for the sulfate, 47.934 mg/L, brings 20 mg/L of calcium with it,
    // so that only 10 of the 40 may stay.
    const source = waterOf({ calcium: 40 });
    const target = waterOf({ calcium: 30, sulfate: 47.934 });
    expectWithin(dilutionFor({ source, target }).demineralised, 0.25, 1e-12);
    const found = wish({ source, target, allowed: ["gypsum"], mostDemineralised: fraction(1) });
    expect(found.ok).toBe(true);
    expectPrinted(found.demineralised, "0.750");
    // 20 L × 20 mg/L × 172.164 / 40.078.
    expectPrinted(found.grams.gypsum ?? NaN, "1.718");
  });

  it("keeps to its limits per litre", () => {
    const target = waterOf({ sodium: 4000, chloride: 6168 });
    expectPrinted(wish({ target }).grams.tableSalt ?? NaN, "20.00");
    const less = wish({ target, most: { tableSalt: gramsPerLitre(0.25) } });
    expectPrinted(less.grams.tableSalt ?? NaN, "5.00");
    expect(less.ok).toBe(false);
    expect(MOST_OF_SALT.gypsum).toBe(2.4);
  });

  it("counts a target as met to 1 mg/L", () => {
    const found = (over: number): boolean =>
      wish({ source: waterOf({ sodium: 20 + over }), target: waterOf({ sodium: 20 }), allowed: [] }).ok;
    expect(found(1)).toBe(true);
    expect(found(1.001)).toBe(false);
  });

  it("refuses no water, limits below zero and shares above one", () => {
    expect(() => wish({ litres: litres(0) })).toThrow("water 0 L is outside 0.001 to 100000 L");
    const minus = JSON.parse('{ "gypsum": -1 }') as Partial<Record<Salt, ReturnType<typeof gramsPerLitre>>>;
    expect(() => wish({ most: minus })).toThrow("most gypsum -1 g/L is outside 0 to 1000 g/L");
    const over = JSON.parse("1.1") as ReturnType<typeof fraction>;
    expect(() => wish({ mostDemineralised: over })).toThrow("demineralised water 1.1 is outside 0 to 1");
    const off = { ...PURE, ...(JSON.parse('{ "sodium": 10001 }') as object) };
    expect(() => wish({ target: off })).toThrow("sodium of the target 10001 mg/L is outside 0 to 10000 mg/L");
    expect(() => wish({ source: off })).toThrow("sodium of the source 10001 mg/L is outside 0 to 10000 mg/L");
  });
});

describe("saltsFor at its optimum", () => {
  const ion = fc.double({ min: 0, max: 400, noNaN: true });
  const water = fc.tuple(ion, ion, ion, ion, ion, ion);
  const waterFrom = (values: readonly number[]): Ions =>
    waterOf(Object.fromEntries(IONS.map((name, i) => [name, values[i] ?? 0])));

  it("meets the conditions of Karush, Kuhn and Tucker for every salt", () => {
    fc.assert(
      fc.property(water, water, fc.subarray([...SALTS], { minLength: 1 }), (from, to, allowed) => {
        const found = wish({ source: waterFrom(from), target: waterFrom(to), allowed, litres: litres(1) });
        for (const salt of allowed) {
          const perGram = ionsFromSalts({ litres: litres(1), grams: { [salt]: grams(1) } });
          // Fall of the squared misfit, mEq²/L², when a gram is added.
          const slope = -IONS.reduce(
            (sum, name) => sum + (perGram[name] / EQUIVALENT[name]) * (found.residual[name] / EQUIVALENT[name]),
            0,
          );
          const mass = found.grams[salt] ?? NaN;
          expect(mass).toBeGreaterThanOrEqual(0);
          expect(mass).toBeLessThanOrEqual(MOST_OF_SALT[salt]);
          if (mass < MOST_OF_SALT[salt]) expect(slope).toBeLessThan(1e-6);
          if (mass > 0) expect(slope).toBeGreaterThan(-1e-6);
        }
      }),
      { numRuns: 500 },
    );
  });

  it("is never worse for more salts to choose from", () => {
    const misfit = ({ residual }: SaltsFor): number =>
      IONS.reduce((sum, name) => sum + (residual[name] / EQUIVALENT[name]) ** 2, 0);
    fc.assert(
      fc.property(water, water, fc.subarray([...SALTS]), (from, to, allowed) => {
        const asked = { source: waterFrom(from), target: waterFrom(to) };
        const all = misfit(wish({ ...asked, allowed: SALTS }));
        expect(all).toBeLessThanOrEqual(misfit(wish({ ...asked, allowed })) + 1e-9);
      }),
      { numRuns: 300 },
    );
  });
});

describe("dilutionFor", () => {
  it("takes 40 % to bring calcium from 80 to 48 (by hand), and names it", () => {
    const found = dilutionFor({ source: TAP, target: { ...TAP, calcium: waterOf({ calcium: 48 }).calcium } });
    expectWithin(found.demineralised, 0.4, 1e-12);
    expect(found.ion).toBe("calcium");
  });

  it("is decided by the ion that is furthest over", () => {
    expect(
      dilutionFor({
        source: TAP,
        target: waterOf({ calcium: 80, magnesium: 6, sodium: 25, bicarbonate: 45, sulfate: 70, chloride: 50 }),
      }),
    ).toEqual({
      demineralised: 0.75,
      ion: "bicarbonate",
    });
  });

  it("takes none where the target is nowhere lower, and all where it is zero", () => {
    expect(dilutionFor({ source: TAP, target: TAP })).toEqual({ demineralised: 0, ion: null });
    expect(dilutionFor({ source: PURE, target: TAP })).toEqual({ demineralised: 0, ion: null });
    expect(dilutionFor({ source: TAP, target: PURE }).demineralised).toBe(1);
  });
});
