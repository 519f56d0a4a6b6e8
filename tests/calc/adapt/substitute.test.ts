import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  substitute,
  type HopStock,
  type Lacking,
  type Substitute,
  type SubstituteInput,
  type SubstituteOutcome,
} from "@/lib/calc/adapt";
import { brew } from "@/lib/calc/ledger";
import { fraction, grams, litresPerKilogram } from "@/lib/calc/units";
import { brewed, brewInput, exactly } from "../../support/brewed";
import { paleAle } from "../../support/brewing-fixtures";
import { expectWithin } from "../../support/expect-within";
import { days, kettles, recipes } from "../../support/random-brews";
import { everyNumberOf } from "../../support/every-number-of";

type Changes = Parameters<typeof brewInput>[0];

/** The fixture's hops: 13 % for 60 min, 6.5 % late, in the stand and dry. */
const forHop = (index: number, alphas: readonly number[], changes: Changes = {}): SubstituteOutcome => {
  const candidates = alphas.map((alpha): HopStock => ({ name: `Hop of ${alpha}`, alpha: fraction(alpha) }));
  return substitute({ ...brewInput(changes), lacking: { list: "hops", index, candidates } });
};

function nearest(outcome: SubstituteOutcome): Substitute {
  const [first] = outcome.ok ? outcome.substitutes : [];
  if (first === undefined) throw new Error(JSON.stringify(outcome.unfit));
  return first;
}

describe("a substitute for a hop", () => {
  const NO_HOLD: Changes = { equipment: { hopAbsorption: exactly(litresPerKilogram(0)) } };

  it("of half the alpha acids needs double the grams, and nothing else changes", () => {
    const found = nearest(forHop(0, [0.065], NO_HOLD));
    expectWithin(found.recipe.hops[0]?.grams ?? 0, 36, 1e-6);
    expect(found.changes).toEqual([]);
    expect(found.recipe.hops[0]?.name).toBe("Hop of 0.065");
    expect(found.recipe.hops[1]).toMatchObject({ name: "Cascade", alpha: 0.065 });
    // ln((0.065 + 0.01) / (0.13 + 0.01)) without its sign.
    expectWithin(found.distance, Math.log(0.14 / 0.075), 1e-12);
    expectWithin(found.unlike.alpha, found.distance, 1e-12);
  });

  it("needs a little more than that where hops hold wort, for the kettle must then boil more", () => {
    const found = nearest(forHop(0, [0.065]));
    const weight = found.recipe.hops[0]?.grams ?? 0;
    expect(weight).toBeGreaterThan(36);
    expect(weight).toBeLessThan(36.5);
    expect(found.changes.map(({ quantity }) => quantity)).toContain("water.total");
    expectWithin(found.ledger.hops[0]?.ibu ?? 0, brewed().hops[0]?.ibu ?? 1, 1e-5);
  });

  it("is itself where it is itself (identity)", () => {
    const found = nearest(forHop(1, [0.065]));
    expect(found.changes).toEqual([]);
    expect(found.distance).toBe(0);
    expectWithin(found.recipe.hops[1]?.grams ?? 0, 20, 1e-5);
  });

  it("is ranked by the ratio of the alpha acids", () => {
    const outcome = forHop(0, [0.05, 0.16, 0.12]);
    if (!outcome.ok) throw new Error(outcome.reason);
    // 0.06/0.14, 0.17/0.14 and 0.13/0.14.
    expect(outcome.substitutes.map(({ candidate }) => candidate)).toEqual([2, 1, 0]);
  });

  it("keeps the dose of a dry hop, whatever its alpha acids", () => {
    const outcome = forHop(3, [0, 0.14]);
    if (!outcome.ok) throw new Error(outcome.reason);
    for (const { recipe, distance, changes } of outcome.substitutes) {
      expectWithin(recipe.hops[3]?.grams ?? 0, 50, 1e-9);
      expect(distance).toBe(0);
      expect(changes).toEqual([]);
    }
    expect(outcome.substitutes.map(({ candidate }) => candidate)).toEqual([0, 1]);
  });

  it("is none without alpha acids where bitterness is wanted", () => {
    expect(forHop(0, [0])).toEqual({
      ok: false,
      reason: "nothing-fits",
      unfit: [{ name: "Hop of 0", candidate: 0, reason: "no-alpha", limits: [] }],
    });
  });

  it("is none where no weight of it that wort takes up would do", () => {
    expect(forHop(0, [0.000001])).toMatchObject({ ok: false, unfit: [{ reason: "bitterness-out-of-reach" }] });
  });

  it("is asked for an addition of nothing, or with alpha acids that are none", () => {
    const hops = paleAle.hops.map((hop) => ({ ...hop, grams: grams(0) }));
    expect(forHop(0, [0.1], { recipe: { hops } })).toMatchObject({ ok: false, reason: "row-gives-nothing" });
    const lacking = { list: "hops", index: 0, candidates: [{ name: "Hop", alpha: 1.2 }] };
    expect(() => substitute({ ...brewInput(), lacking } as unknown as SubstituteInput)).toThrow("alpha acids 1.2");
    expect(() => forHop(4, [0.1])).toThrow("row 4 is outside 0 to 3");
  });
});

describe("a substitute for any row of any recipe", () => {
  it("keeps volume and original extract, comes in order, and never as something that is no number", () => {
    fc.assert(
      fc.property(recipes, recipes, kettles, days, (recipe, other, equipment, ambient) => {
        const written = brew({ recipe, equipment, ambient });
        if (!written.ok) return;
        const lists: Lacking[] = [];
        if (recipe.hops.length > 0) lists.push({ list: "hops", index: 0, candidates: other.hops });
        lists.push({ list: "fermentables", index: 0, candidates: other.fermentables });
        for (const lacking of lists) {
          const outcome = substitute({ recipe, equipment, ambient, lacking });
          expect(everyNumberOf(outcome).every(Number.isFinite)).toBe(true);
          if (!outcome.ok) continue;
          expect(outcome.substitutes.length + outcome.unfit.length).toBe(lacking.candidates.length);
          const distances = outcome.substitutes.map(({ distance }) => distance);
          expect(distances).toEqual([...distances].sort((one, two) => one - two));
          for (const { ledger } of outcome.substitutes) {
            for (const id of ["fermenter.volume", "fermenter.originalExtract"] as const) {
              expectWithin((ledger.quantities[id] ?? 0) / (written.ledger.quantities[id] ?? 1), 1, 1e-6);
            }
          }
        }
      }),
      { numRuns: 300, seed: 20261125 },
    );
  }, 120_000);
});
