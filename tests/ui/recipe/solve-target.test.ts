import { describe, expect, it } from "vitest";
import { specificGravityToPlato } from "@/lib/calc/gravity";
import { brew, type Ledger, type Recipe } from "@/lib/calc/ledger";
import { specificGravity } from "@/lib/calc/units";
import { ACID_SOLUTIONS } from "@/lib/calc/water";
import { compute, type Brewed } from "@/lib/ui/recipe/compute";
import { solveTarget, type Target } from "@/lib/ui/recipe/solve-target";
import { garageKettle, paleAle, sameDay } from "../../support/brewing-fixtures";

function brewed(recipe: Recipe = paleAle): Brewed {
  const computed = compute(recipe, garageKettle, sameDay);
  if (!computed.ok) throw new Error(computed.why);
  return computed.brewed;
}

/** The solved recipe, brewed once more by the ledger itself. */
function met(target: Target): { readonly recipe: Recipe; readonly ledger: Ledger } {
  const solved = solveTarget(target, brewed());
  if (!solved.ok) throw new Error(solved.why);
  const outcome = brew({ recipe: solved.recipe, equipment: garageKettle, ambient: sameDay });
  if (!outcome.ok) throw new Error(outcome.reason);
  return { recipe: solved.recipe, ledger: outcome.ledger };
}

const masses = ({ fermentables }: Recipe): readonly number[] => fermentables.map(({ kg }) => kg);

describe("solveTarget", () => {
  it("scales the whole grist to a gravity and leaves its proportions and the hops as they are", () => {
    const wanted = specificGravityToPlato(specificGravity(1.06));
    const { recipe, ledger } = met({ kind: "gravity", wanted });
    expect(ledger.quantities["fermenter.originalExtract"]).toBeCloseTo(wanted, 6);
    const ratios = masses(recipe).map((kg, i) => kg / (masses(paleAle)[i] ?? NaN));
    for (const ratio of ratios) expect(ratio).toBeCloseTo(ratios[0] ?? NaN, 9);
    expect(recipe.hops).toEqual(paleAle.hops);
  });

  it("weighs one hop for its bitterness and leaves all others", () => {
    const { recipe, ledger } = met({ kind: "bitterness", hop: 0, wanted: 25 });
    expect(ledger.hops[0]?.ibu).toBeCloseTo(25, 6);
    expect(recipe.hops.slice(1)).toEqual(paleAle.hops.slice(1));
    expect(recipe.fermentables).toEqual(paleAle.fermentables);
  });

  it("gives a colour by one row, and the others keep the strength", () => {
    const { recipe, ledger } = met({ kind: "colour", fermentable: 2, wanted: 25 });
    expect(ledger.quantities["fermenter.colour"]).toBeCloseTo(25, 5);
    expect(ledger.quantities["fermenter.originalExtract"]).toBeCloseTo(
      brewed().ledger.quantities["fermenter.originalExtract"] ?? NaN,
      6,
    );
    const [first, second] = masses(recipe).map((kg, i) => kg / (masses(paleAle)[i] ?? NaN));
    expect(first).toBeCloseTo(second ?? NaN, 9);
  });

  it("brings the mash to a pH with acid", () => {
    const acid = ACID_SOLUTIONS.lactic80;
    const { recipe, ledger } = met({ kind: "mash pH", acid, wanted: 5.3 });
    expect(ledger.quantities["mash.ph"]).toBeCloseTo(5.3, 6);
    expect(recipe.water.acid?.ml).toBeGreaterThan(0);
  });

  it("weighs salts for the ions that were asked for, and says what stays off", () => {
    const now = brewed().ledger.quantities;
    const calcium = (now["water.calcium"] ?? 0) + 40;
    const sulfate = (now["water.sulfate"] ?? 0) + (40 / 40.078) * 96.06;
    // Gypsum alone brings calcium and sulfate one to one: by its formula this is met.
    const one = solveTarget({ kind: "ions", wanted: { calcium, sulfate } }, brewed());
    expect(one.ok && one.residual.calcium).toBeUndefined();
    // No salt takes an ion out of the water.
    const none = solveTarget({ kind: "ions", wanted: { calcium: 0 } }, brewed());
    expect(none.ok && none.residual.calcium).toBeGreaterThan(1);
  });

  it("says why a target cannot be met, and what can be", () => {
    const above = solveTarget({ kind: "mash pH", acid: ACID_SOLUTIONS.lactic80, wanted: 7 }, brewed());
    expect(above).toMatchObject({ ok: false, why: expect.stringContaining("only ever lowers") as string });
    const dark = solveTarget({ kind: "colour", fermentable: 0, wanted: 400 }, brewed());
    expect(dark.ok).toBe(false);
    if (!dark.ok) expect(dark.reachable?.high).toBeLessThan(400);
  });
});
