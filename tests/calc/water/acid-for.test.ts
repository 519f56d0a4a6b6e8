import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { celsius, millilitres, ph } from "@/lib/calc/units";
import { ACID_SOLUTIONS, KOLBACH_REACTION, acidFor, mashPh, mashPhAtTemperature } from "@/lib/calc/water";
import { phOfWater, spargeAcidFor, type Mash, type MashToAcidify } from "@/lib/calc/water";
import { expectPrinted } from "../../support/expect-printed";
import { expectWithin } from "../../support/expect-within";
import { NO_REACTION, liquorOf, maltOf } from "../../support/mash-of";

const DROP = liquorOf(0.001, {}, { ph: 7 });
const MASH: Mash = { water: DROP, grist: [maltOf(5, 5.75, 38)], hardnessReaction: NO_REACTION, acids: [] };
const LACTIC = ACID_SOLUTIONS.lactic88;

const toward = (targetPh: number, mostMl = 20): MashToAcidify => ({
  ...MASH,
  targetPh: ph(targetPh),
  acid: LACTIC,
  mostMl: millilitres(mostMl),
});

describe("acidFor", () => {
  it("asks for 5.793 mL of 88 % lactic acid to bring 5 kg from 5.75 to 5.4 (by hand)", () => {
    // 5 × 38 × 0.35 = 66.5 mEq over 11.8111 × 0.97197 = 11.4800 mEq/mL.
    const found = acidFor(toward(5.4));
    expect(found.ok).toBe(true);
    expectPrinted(found.ok ? found.ml : NaN, "5.793");
  });

  it("takes the mash of docs/worked-examples.md#mash-ph from 5.716 to 5.40 with 5.026 mL", () => {
    const ions = { calcium: 50, magnesium: 10, bicarbonate: 121.926 };
    const found = acidFor({
      ...toward(5.4),
      water: liquorOf(15, ions, { carbonDioxide: "lost" }),
      grist: [maltOf(4.5, 5.75, 35), maltOf(0.5, 4.8, 50)],
      hardnessReaction: KOLBACH_REACTION,
    });
    expectPrinted(found.ok ? found.ml : NaN, "5.026");
  });

  it("says what a mash that is already lower would need, and asks nothing of one that is there", () => {
    // 190 mEq/pH × 0.1 pH.
    const found = acidFor(toward(5.85));
    expect(found).toMatchObject({ ok: false, reason: "already-below" });
    if (found.ok || found.reason !== "already-below") return;
    expectWithin(found.ph, 5.75, 1e-6);
    expectPrinted(found.baseNeeded, "19.00");
    const there = acidFor(toward(5.749999999));
    expect(there.ok).toBe(true);
    expectWithin(there.ok ? there.ml : NaN, 0, 1e-6);
  });

  it("stops at the most that may be added and says how far that goes", () => {
    const found = acidFor(toward(5.4, 3));
    expect(found).toMatchObject({ ok: false, reason: "too-much-acid", ml: 3 });
    if (found.ok || found.reason !== "too-much-acid") return;
    // 66.5 − 3 × 11.48 mEq are missing; 3 × 11.61 mEq, at pH 5.57, make 5.75 − 34.83 / 190.
    expectPrinted(found.acidMissing, "32.06");
    expectPrinted(found.ph, "5.567");
    expect(acidFor(toward(5.4, 5.8)).ok).toBe(true);
    expect(acidFor(toward(5.4, 5.79)).ok).toBe(false);
  });

  it("counts what is already in the mash", () => {
    const half = acidFor({ ...toward(5.4), acids: [{ acid: LACTIC, ml: millilitres(2.8963) }] });
    expectWithin(half.ok ? half.ml : NaN, 2.8963, 0.001);
  });

  it("has nothing to acidify without grist, and no target beyond the span", () => {
    expect(acidFor({ ...toward(5.4), grist: [] })).toEqual({ ok: false, reason: "no-grist" });
    expect(() => acidFor(toward(2.9))).toThrow("target pH 2.9 pH is outside 3 to 10 pH");
    expect(() => acidFor(toward(10.1))).toThrow("target pH 10.1 pH is outside 3 to 10 pH");
    const minus = { ...toward(5.4), ...(JSON.parse('{ "mostMl": -1 }') as object) };
    expect(() => acidFor(minus)).toThrow("most acid -1 mL is outside 0 to 1000000 mL");
  });

  it("and mashPh are inverse to each other", () => {
    const number = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(
        fc.array(fc.tuple(number(3, 20), number(5, 6.1), number(20, 60)), { minLength: 1, maxLength: 4 }),
        fc.record({ calcium: number(0, 300), magnesium: number(0, 60), bicarbonate: number(0, 500) }),
        number(4.8, 5.8),
        fc.constantFrom(...Object.values(ACID_SOLUTIONS)),
        (malts, ions, target, acid) => {
          const grist = malts.map((row) => maltOf(...row));
          const mash = { water: liquorOf(15, ions), grist, hardnessReaction: KOLBACH_REACTION, acids: [] };
          const found = acidFor({ ...mash, targetPh: ph(target), acid, mostMl: millilitres(1e6) });
          const acids = found.ok ? [{ acid, ml: found.ml }] : [];
          const reached = mashPh({ ...mash, acids });
          if (!reached.ok) throw new Error(reached.reason);
          if (found.ok) expectWithin(reached.ph, target, 1e-6);
          else expect(reached.ph).toBeLessThan(target);
        },
      ),
      { numRuns: 300 },
    );
  });
});

describe("phOfWater", () => {
  const reads = (...liquor: Parameters<typeof liquorOf>): ReturnType<typeof phOfWater> =>
    phOfWater({ water: liquorOf(...liquor), acids: [] });
  const of = (found: ReturnType<typeof phOfWater>): number => (found.ok ? found.ph : NaN);

  it("gives back the pH that was analysed", () => {
    for (const at of [5, 6.3, 7.5, 9, 10.5]) expectWithin(of(reads(1, { bicarbonate: 180 }, { ph: at })), at, 1e-6);
  });

  it("gives baking soda in pure water the mean of both pK, 8.34 (amphiprotic closed form)", () => {
    // (6.352 + 10.329) / 2 at 0.1 mol/L.
    expectPrinted(of(reads(1, {}, { ph: 7, salts: { bakingSoda: 8.4006 } })), "8.34");
  });

  it("gives limewater of 1 mmol/L 2e-3 mol/L of hydroxide: pH 13.995 − 2.699", () => {
    expectPrinted(of(reads(1, {}, { ph: 7, salts: { slakedLime: 0.074092 } })), "11.296");
  });

  it("names water more acid or more alkaline than it can weigh", () => {
    const acids = [{ acid: ACID_SOLUTIONS.hydrochloric10, ml: millilitres(7) }];
    // 7 × 2.8745 = 20.1 mmol/L: pH 1.70.
    expect(phOfWater({ water: liquorOf(1, {}, { ph: 7 }), acids })).toEqual({ ok: false, reason: "too-acid", ph: 2 });
    // 2 g/L of slaked lime: 54 mmol/L of hydroxide, pH 12.73.
    expect(reads(1, {}, { ph: 7, salts: { slakedLime: 2 } })).toEqual({
      ok: false,
      reason: "too-alkaline",
      ph: 12.6,
    });
  });

  it("reads neutral water at 13.995 / 2 even where the analysis claims more base than it has alkalinity for", () => {
    expectPrinted(of(reads(1, {}, { ph: 9 })), "6.998");
    expectPrinted(of(reads(1, {}, { ph: 7 })), "6.998");
  });

  it("loses all pH that carbon dioxide held down when that escapes", () => {
    // 3 mEq/L of bare base: 3e-3 mol/L of hydroxide, pH 13.995 − 2.523.
    expectPrinted(of(reads(1, { bicarbonate: 183.048 }, { carbonDioxide: "lost" })), "11.472");
  });
});

describe("spargeAcidFor", () => {
  const water = liquorOf(10, { bicarbonate: 183.048, calcium: 100 });
  const wanted = { water, acids: [], acid: ACID_SOLUTIONS.hydrochloric10, mostMl: millilitres(50) };

  it("asks for 8.77 mL of 10 % hydrochloric acid to bring 10 L of 3 mEq/L from 7.5 to 5.6 (by hand)", () => {
    // Carbon 3 / 0.93508 = 3.2083 mmol/L, 0.15042 of it bicarbonate at 5.6: 3 − 0.4826 + 0.0025 free = 2.5199 mEq/L.
    const found = spargeAcidFor({ ...wanted, targetPh: ph(5.6) });
    expectPrinted(found.ok ? found.ml : NaN, "8.77");
  });

  it("brings the water where phOfWater then finds it", () => {
    for (const target of [4.5, 5.6, 6.5, 7.4]) {
      const found = spargeAcidFor({ ...wanted, targetPh: ph(target) });
      const acids = [{ acid: wanted.acid, ml: millilitres(found.ok ? found.ml : NaN) }];
      const reached = phOfWater({ water, acids });
      expectWithin(reached.ok ? reached.ph : NaN, target, 1e-6);
    }
  });

  it("leaves water alone that is low enough, and stops at the most", () => {
    const low = spargeAcidFor({ ...wanted, targetPh: ph(8) });
    expect(low).toMatchObject({ ok: false, reason: "already-below" });
    expectWithin("ph" in low ? low.ph : NaN, 7.5, 1e-6);
    const much = spargeAcidFor({ ...wanted, mostMl: millilitres(4), targetPh: ph(5.6) });
    expect(much).toMatchObject({ ok: false, reason: "too-much-acid", ml: 4 });
    expect(() => spargeAcidFor({ ...wanted, targetPh: ph(1.9) })).toThrow("target pH 1.9 pH is outside 2 to 12.6 pH");
  });
});

describe("mashPhAtTemperature", () => {
  it.each([
    { at: 20, printed: "5.40" },
    { at: 50, printed: "5.20" },
    { at: 65, printed: "5.10" },
    { at: 80, printed: "5.00" },
  ])("reads 5.4 as $printed at $at °C (0.3 lower at 65 °C: common practice, no source)", ({ at, printed }) => {
    expectPrinted(mashPhAtTemperature({ ph: ph(5.4), celsius: celsius(at) }), printed);
  });

  it("refuses temperatures no mash has and a pH without room to fall", () => {
    expect(() => mashPhAtTemperature({ ph: ph(5.4), celsius: celsius(19.9) })).toThrow(
      "mash temperature 19.9 °C is outside 20 to 80 °C",
    );
    expect(() => mashPhAtTemperature({ ph: ph(5.4), celsius: celsius(80.1) })).toThrow("outside 20 to 80 °C");
    expect(() => mashPhAtTemperature({ ph: ph(0.9), celsius: celsius(65) })).toThrow(
      "pH at room temperature 0.9 pH is outside 1 to 14 pH",
    );
  });
});
