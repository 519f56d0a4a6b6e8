import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fraction, kilograms, milliequivalentsPerKilogramPh, millilitres, ph } from "@/lib/calc/units";
import { ACID_SOLUTIONS, KOLBACH_REACTION, mashPh } from "@/lib/calc/water";
import type { AcidAddition, Mash, MashPh, MashedMalt } from "@/lib/calc/water";
import { expectPrinted } from "../../support/expect-printed";
import { expectWithin } from "../../support/expect-within";
import { NO_REACTION, liquorOf, maltOf } from "../../support/mash-of";

const acidOf = (ml: number, acid: AcidAddition["acid"] = ACID_SOLUTIONS.hydrochloric10): AcidAddition => ({
  acid,
  ml: millilitres(ml),
});
// 10 % hydrochloric acid: 1000 × 1.048 × 0.1 / 36.458 mmol/mL.
const HYDROCHLORIC_MMOL_PER_ML = 2.874541;

const settled = (mash: Partial<Mash>): Extract<MashPh, { ok: true }> => {
  const found = mashPh({ water: DROP, grist: [PALE], hardnessReaction: NO_REACTION, acids: [], ...mash });
  if (!found.ok) throw new Error(found.reason);
  return found;
};

// So little water that its own acidity does not count.
const DROP = liquorOf(0.001, {}, { ph: 7 });
const PALE = maltOf(1, 5.75, 40);

describe("mashPh", () => {
  it("leaves a malt at its own pH in distilled water", () => {
    expectPrinted(settled({ water: liquorOf(15, {}, { ph: 7 }), grist: [maltOf(5, 5.75, 35)] }).ph, "5.750");
  });

  it("gives 5.716 for two malts in a water of 100 mg/L alkalinity (closed form by hand)", () => {
    // Alkalinity 100 / 50.043 × 15 = 29.974 mEq as 121.926 mg/L bicarbonate; calcium 50 / 20.039 / 3.5 × 15 = 10.693;
    // magnesium 10 / 12.1525 / 7 × 15 = 1.763. (157.5 × 5.75 + 25 × 4.8 + 17.518) / 182.5 = 5.7158.
    const water = liquorOf(15, { calcium: 50, magnesium: 10, bicarbonate: 121.926 }, { carbonDioxide: "lost" });
    const grist = [maltOf(4.5, 5.75, 35), maltOf(0.5, 4.8, 50)];
    const { ph: found, terms } = settled({ water, grist, hardnessReaction: KOLBACH_REACTION });
    expectPrinted(found, "5.716");
    expectPrinted(terms.calcium, "10.69");
    expectPrinted(terms.magnesium, "1.76");
    // 157.5 × (5.7158 − 5.75) and 25 × (5.7158 − 4.8); free acid of 0.03 mEq in the water is left over.
    expectPrinted(terms.malts[0] ?? NaN, "-5.4");
    expectPrinted(terms.malts[1] ?? NaN, "22.9");
    expectPrinted(terms.alkalinity, "-30.0");
    expect(terms.acids).toEqual([]);
  });

  it("takes back what carbon dioxide keeps of the alkalinity when it does not escape", () => {
    // 3 mEq/L at pH 7.5 are 3 / 0.9351 mmol/L of carbon; strong acid takes a mash of 1000 L to 5.4, where 0.1005 of it
    // is bicarbonate and 0.0040 mEq/L of acid is free: 3 − 0.3223 + 0.0040 = 2.6816 mEq/L are used up.
    const water = liquorOf(1000, { bicarbonate: 183.048 });
    const { ph: found, terms } = settled({ water, grist: [maltOf(0.1, 5.4, 40)], acids: [acidOf(932.89)] });
    expectWithin(932.89 * HYDROCHLORIC_MMOL_PER_ML, 2681.6, 0.05);
    expectPrinted(found, "5.400");
    expectWithin(terms.alkalinity, -2681.6, 0.5);
    expectWithin(terms.acids[0] ?? NaN, 2681.6, 0.05);
  });

  it("counts lime, chalk and baking soda by their equivalents of base, and by their carbon only where it stays", () => {
    // 20 mEq each: slaked lime 74.092 / 2, chalk 100.086 / 2 and baking soda 84.006 g/mol.
    const salts = { slakedLime: 0.74092, chalk: 1.00086, bakingSoda: 1.68012 };
    const with1 = (salt: keyof typeof salts, carbonDioxide: "kept" | "lost"): number =>
      settled({ water: liquorOf(3, {}, { ph: 7, carbonDioxide, salts: { [salt]: salts[salt] } }) }).ph;
    // 40 mEq/(kg·pH): 20 mEq of base move a kilogram by half a unit; 3 L at pH 6.25 hold less than 0.002 mEq free.
    for (const salt of ["slakedLime", "chalk", "bakingSoda"] as const) expectPrinted(with1(salt, "lost"), "6.250");
    expectPrinted(with1("slakedLime", "kept"), "6.250");
    // Carbon that stays is 10 mmol from chalk and 20 from soda, and 1/(1 + 10^(6.352 − pH)) of it is bicarbonate:
    // 40 × 0.4031 + 10 × 0.3875 = 20.0 at 6.153, and 40 × 0.3267 + 20 × 0.3465 = 20.0 at 6.077.
    expectPrinted(with1("chalk", "kept"), "6.153");
    expectPrinted(with1("bakingSoda", "kept"), "6.077");
  });

  it("lets calcium and magnesium of salts react as those of the water do", () => {
    // 8.6082 g gypsum and 12.3233 g Epsom salt are 100 mEq of calcium and of magnesium: 28.57 and 14.29 mEq of acid.
    const water = liquorOf(1, {}, { ph: 7, salts: { gypsum: 8.6082, epsomSalt: 12.3233 } });
    const { ph: found, terms } = settled({ water, hardnessReaction: KOLBACH_REACTION });
    expectPrinted(terms.calcium, "28.57");
    expectPrinted(terms.magnesium, "14.29");
    // 5.75 − 42.857 / 40; free acid of the litre, 0.02 mEq, gives 0.0005 back.
    expectPrinted(found, "4.68");
  });

  it("follows a titration curve inside its span and its tangent beyond", () => {
    const titrated: MashedMalt = {
      ...maltOf(1, 5.7, 40),
      titration: { quadratic: 10, cubic: 20, fromPh: ph(4.7), toPh: ph(6.2) },
    };
    // x = −0.5: −20 + 2.5 − 2.5 = −20 mEq.
    expectPrinted(settled({ grist: [titrated], acids: [acidOf(20 / HYDROCHLORIC_MMOL_PER_ML)] }).ph, "5.200");
    // x = −1.2: −40 + 10 − 20 at the end, less 0.2 × (40 − 20 + 60) = −66 mEq.
    expectPrinted(settled({ grist: [titrated], acids: [acidOf(66 / HYDROCHLORIC_MMOL_PER_ML)] }).ph, "4.500");
    // x = 1: at 0.5 20 + 2.5 + 2.5, and 0.5 × (40 + 10 + 15) more = 57.5 mEq, as 2.13011 g of slaked lime.
    const limed = { ...DROP, salts: liquorOf(1, {}, { salts: { slakedLime: 2.130145 } }).salts };
    expectPrinted(settled({ grist: [titrated], water: limed }).ph, "6.700");
  });

  it("takes acidulated malt as malt that carries its lactic acid", () => {
    // 20 g of lactic acid are 222.03 mmol. At pH 3.63, 0.3706 of it has given off its proton: 82.3 mEq, and
    // 40 × (5.7 − 3.63) = 82.8 mEq is what the malt takes up. Common practice, no source: 3.4 to 3.6 in distilled water.
    expectWithin(settled({ grist: [maltOf(1, 5.7, 40, 0.02)] }).ph, 3.632, 0.005);
    const { terms } = settled({ grist: [maltOf(10, 5.7, 38), maltOf(0.1, 5.7, 38, 0.02)] });
    // 22.203 mmol at pH 5.643, 98.4 % given off, shared with 10 kg.
    // The drop of water holds 10^−5.64 mol/L of free acid, 2e-6 mEq.
    expectWithin((terms.malts[0] ?? NaN) + (terms.malts[1] ?? NaN), 0, 3e-6);
    expectWithin(settled({ grist: [maltOf(10, 5.7, 38), maltOf(0.1, 5.7, 38, 0.02)] }).ph, 5.7 - 21.84 / 383.8, 0.0005);
  });

  it("names a mash without grist and a balance beyond what malts are titrated at", () => {
    expect(mashPh({ water: DROP, grist: [], hardnessReaction: NO_REACTION, acids: [] })).toEqual({
      ok: false,
      reason: "no-grist",
    });
    const nothing = { water: DROP, grist: [maltOf(0, 5.7, 40)], hardnessReaction: NO_REACTION, acids: [] };
    expect(mashPh(nothing)).toEqual({ ok: false, reason: "no-grist" });
    const sour = { water: DROP, grist: [PALE], hardnessReaction: NO_REACTION, acids: [acidOf(60)] };
    expect(mashPh(sour)).toEqual({ ok: false, reason: "too-acid", ph: 3 });
    const limed = liquorOf(1, {}, { ph: 7, salts: { slakedLime: 10 } });
    const alkaline = { water: limed, grist: [PALE], hardnessReaction: NO_REACTION, acids: [] };
    expect(mashPh(alkaline)).toEqual({ ok: false, reason: "too-alkaline", ph: 10 });
  });

  it("is never raised by acid nor lowered by alkalinity, and its terms cancel", () => {
    const number = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
    const malt = fc.tuple(number(0.1, 20), number(4.4, 6.1), number(10, 60), number(0, 0.02));
    fc.assert(
      fc.property(
        fc.array(malt, { minLength: 1, maxLength: 5 }),
        fc.record({ calcium: number(0, 300), magnesium: number(0, 60), bicarbonate: number(0, 500) }),
        number(6, 9.5),
        number(0, 20),
        fc.constantFrom(...Object.values(ACID_SOLUTIONS)),
        fc.constantFrom("kept", "lost"),
        (malts, ions, waterPh, ml, acid, carbonDioxide) => {
          const grist = malts.map((row) => maltOf(...row));
          const other = { ph: waterPh, carbonDioxide };
          const base = { grist, hardnessReaction: KOLBACH_REACTION, acids: [] };
          const before = mashPh({ ...base, water: liquorOf(15, ions, other) });
          const soured = mashPh({ ...base, water: liquorOf(15, ions, other), acids: [acidOf(ml, acid)] });
          const limed = mashPh({ ...base, water: liquorOf(15, ions, { ...other, salts: { slakedLime: 1 } }) });
          const phOf = (found: MashPh): number => ("ph" in found ? found.ph : NaN);
          expect(phOf(soured)).toBeLessThanOrEqual(phOf(before) + 1e-9);
          expect(phOf(limed)).toBeGreaterThanOrEqual(phOf(before) - 1e-9);
          if (!soured.ok) return;
          const { malts: given, acids, calcium, magnesium, alkalinity } = soured.terms;
          const sum = [...given, ...acids, calcium, magnesium, alkalinity].reduce((all, term) => all + term, 0);
          expectWithin(sum, 0, 1e-5);
        },
      ),
      { numRuns: 300 },
    );
  });
});

describe("mashPh refuses", () => {
  const mash = (changed: Partial<Mash>) => (): MashPh =>
    mashPh({ water: DROP, grist: [PALE], hardnessReaction: NO_REACTION, acids: [], ...changed });
  const titration = (quadratic: number, cubic: number, fromPh = 4.75, toPh = 6.75): Partial<Mash> => ({
    grist: [
      {
        ...PALE,
        buffering: milliequivalentsPerKilogramPh(1),
        titration: { quadratic, cubic, fromPh: ph(fromPh), toPh: ph(toPh) },
      },
    ],
  });

  it.each([
    { changed: { water: liquorOf(0, {}) }, says: "water 0 L is outside 0.001 to 100000 L" },
    { changed: { water: liquorOf(1, {}, { ph: 4.9 }) }, says: "pH of the water 4.9 pH is outside 5 to 10.5 pH" },
    { changed: { water: liquorOf(1, {}, { ph: 10.6 }) }, says: "pH of the water 10.6 pH is outside 5 to 10.5 pH" },
    {
      changed: { grist: [{ ...PALE, distilledWaterPh: ph(2.9) }] },
      says: "distilled-water pH 2.9 pH is outside 3 to 8 pH",
    },
    {
      changed: { grist: [{ ...PALE, distilledWaterPh: ph(8.1) }] },
      says: "distilled-water pH 8.1 pH is outside 3 to 8 pH",
    },
    {
      changed: { hardnessReaction: { calcium: 1.1, magnesium: 0 } },
      says: "protons for calcium 1.1 is outside 0 to 1",
    },
    {
      changed: { hardnessReaction: { calcium: 0, magnesium: -1 } },
      says: "protons for magnesium -1 is outside 0 to 1",
    },
    { changed: titration(501, 0), says: "quadratic term 501 mEq/(kg·pH²) is outside -500 to 500 mEq/(kg·pH²)" },
    { changed: titration(0, -501), says: "cubic term -501 mEq/(kg·pH³) is outside -500 to 500 mEq/(kg·pH³)" },
    { changed: titration(0, 0, 5.8), says: "first pH of the titration 5.8 pH is outside 0 to 5.75 pH" },
    { changed: titration(0, 0, 4.75, 5.7), says: "last pH of the titration 5.7 pH is outside 5.75 to 14 pH" },
    // Slope 1 + 2 × 20 x at x = −1, the lower end.
    { changed: titration(20, 0), says: "slope of the titration -39 mEq/(kg·pH) is outside 0 to 10000 mEq/(kg·pH)" },
    // Slope 1 − 2 × 20 × 1 at the upper end.
    { changed: titration(-20, 0), says: "slope of the titration -39 mEq/(kg·pH) is outside" },
    // 1 + 20 x + 60 x² is lowest between the ends, at x = −1/6: −0.667.
    { changed: titration(10, 20), says: "slope of the titration -0.66" },
  ])("what no mash is made of: $says", ({ changed, says }) => {
    expect(mash(changed)).toThrow(says);
  });

  it("numbers that no maker would have let through", () => {
    const minus = JSON.parse("-1") as number;
    const badMalt = (row: object): Partial<Mash> => ({ grist: [{ ...PALE, ...row }] });
    expect(mash(badMalt({ kg: minus }))).toThrow("malt -1 kg is outside 0 to 100000 kg");
    expect(mash(badMalt({ buffering: minus }))).toThrow("buffering -1 mEq/(kg·pH) is outside 0 to 200 mEq/(kg·pH)");
    expect(mash(badMalt({ lacticFraction: minus }))).toThrow("lactic acid in the malt -1 is outside 0 to 1");
    expect(mash({ acids: [{ ...acidOf(0), ...{ ml: JSON.parse("-1") as AcidAddition["ml"] } }] })).toThrow(
      "volume of acid -1 mL is outside 0 to 1000000 mL",
    );
    const calcium = JSON.parse('{ "calcium": -1 }') as object;
    expect(mash({ water: { ...DROP, ions: { ...DROP.ions, ...calcium } } })).toThrow("calcium -1 mg/L is outside");
    const gypsum = JSON.parse('{ "gypsum": -1 }') as Mash["water"]["salts"];
    expect(mash({ water: { ...DROP, salts: gypsum } })).toThrow("gypsum -1 g is outside 0 to 10000000 g");
  });

  it("but takes a titration whose slope touches zero", () => {
    // 1 + 20 x + 100 x² = (1 + 10 x)²: flat at x = −0.1 only.
    expect(mash(titration(10, 100 / 3))).not.toThrow();
    expect(mash({ grist: [{ ...maltOf(1, 5.75, 1), lacticFraction: fraction(1), kg: kilograms(1) }] })().ok).toBe(
      false,
    );
  });
});
