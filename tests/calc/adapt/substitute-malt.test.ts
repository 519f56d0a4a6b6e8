import { describe, expect, it } from "vitest";
import { substitute, type FermentableStock, type Substitute, type SubstituteOutcome } from "@/lib/calc/adapt";
import { kilograms, litresPerKilogram, millilitres, type Ebc } from "@/lib/calc/units";
import { ACID_SOLUTIONS } from "@/lib/calc/water";
import { brewed, brewInput, exactly, valueOf } from "../../support/brewed";
import { garageKettle, malt, paleAle } from "../../support/brewing-fixtures";
import { expectWithin } from "../../support/expect-within";

type Changes = Parameters<typeof brewInput>[0];

/** Rows of the fixture: pale malt 81 %, Munich, caramel malt 158.6 EBC, sugar. */
const [pale, , caramel, sugar] = paleAle.fermentables;
if (pale === undefined || caramel === undefined || sugar === undefined) throw new Error("the fixture has four rows");

const stock = (name: string, extract: number, moisture: number, colour: number): FermentableStock => {
  const { kg, ...row } = malt(name, 1, extract, moisture, colour);
  return row;
};

const forMalt = (index: number, candidates: readonly FermentableStock[], changes: Changes = {}): SubstituteOutcome =>
  substitute({ ...brewInput(changes), lacking: { list: "fermentables", index, candidates } });

function nearest(outcome: SubstituteOutcome): Substitute {
  const [first] = outcome.ok ? outcome.substitutes : [];
  if (first === undefined) throw new Error(JSON.stringify(outcome.unfit));
  return first;
}

const kgOf = ({ recipe }: Substitute, index: number): number => recipe.fermentables[index]?.kg ?? NaN;

describe("a substitute for a malt", () => {
  it.each([0, 1, 2, 3])("that is the malt itself changes nothing (identity, row %i)", (index) => {
    const { kg, ...itself } = paleAle.fermentables[index] ?? malt("none", 0, 0, 0, 0);
    const found = nearest(forMalt(index, [itself]));
    expect(found.changes).toEqual([]);
    expectWithin(found.distance, 0, 1e-6);
    found.recipe.fermentables.forEach((row, i) => {
      expectWithin(row.kg, paleAle.fermentables[i]?.kg ?? 0, 1e-6);
    });
    expectWithin(kgOf(found, index), kg, 1e-6);
  });

  it("brings the same extract: the masses are as the yields where nothing else depends on the mass", () => {
    // No wort is held by the grain and the malts are as moist as each other: mass ratio 0.81 / 0.72 = 1.125.
    const dry: Changes = {
      lauter: { absorption: exactly(litresPerKilogram(0)), method: "none" },
      recipe: { thickness: null },
    };
    const found = nearest(forMalt(0, [stock("Weak pale malt", 0.72, 0.035, 6)], dry));
    // Its colour comes to an eighth more, for which the caramel malt gives way and pale malt makes up the extract.
    const before = brewed(dry);
    const extract = found.ledger.fermentables.reduce((sum, row) => sum + row.extractKg, 0);
    expectWithin(
      extract,
      before.fermentables.reduce((sum, row) => sum + row.extractKg, 0),
      1e-6,
    );
    const share = found.ledger.fermentables[0]?.share ?? 0;
    const massPerShare = kgOf(found, 0) / share;
    expectWithin(massPerShare / (4.4 / (before.fermentables[0]?.share ?? 1)), 1.125, 1e-6);
  });

  it("keeps original extract, colour and the bitterness of each addition to a millionth", () => {
    const before = brewed();
    const found = nearest(forMalt(0, [stock("Pilsner malt", 0.8, 0.045, 3.5)]));
    const { ledger } = found;
    for (const id of ["fermenter.volume", "fermenter.originalExtract", "fermenter.colour"] as const) {
      expectWithin(valueOf(ledger, id) / valueOf(before, id), 1, 1e-6);
    }
    ledger.hops.forEach((hop, i) => {
      expectWithin(hop.ibu, before.hops[i]?.ibu ?? 0, 1e-5);
    });
    expect(found.unlike.beerColour).toBeLessThan(1e-6);
    // A paler base malt asks for more of the malt that colours.
    expect(kgOf(found, 2)).toBeGreaterThan(0.25);
  });

  it("for colour is weighed by its colour, and pale malt makes up the extract", () => {
    // 158.6 EBC is (158.6/1.97 + 0.76)/1.3546 = 59.99 °L; 100 EBC is 38.04 °L; their ratio is 1.577.
    const found = nearest(forMalt(2, [stock("Caramel malt 38L", 0.76, 0.043, 100)]));
    const ratio = kgOf(found, 2) / 0.25;
    // More of it displaces pale malt, whose own colour then is a little less.
    expect(ratio).toBeGreaterThan(1.577);
    expect(ratio).toBeLessThan(1.577 * 1.05);
    expect(kgOf(found, 0)).toBeLessThan(4.4);
    expectWithin(valueOf(found.ledger, "fermenter.colour"), valueOf(brewed(), "fermenter.colour"), 1e-6);
    // The Munich malt and the sugar keep their share of the extract, the base malts theirs among each other.
    const before = brewed().fermentables;
    expectWithin(found.ledger.fermentables[3]?.share ?? 0, before[3]?.share ?? 1, 1e-6);
  });

  it("leaves other colouring malts alone", () => {
    const roast = malt("Roast malt", 0.05, 0.7, 0.03, 900);
    const recipe = { fermentables: [...paleAle.fermentables, roast] };
    const found = nearest(forMalt(2, [stock("Caramel malt 38L", 0.76, 0.043, 100)], { recipe }));
    const before = brewed({ recipe }).fermentables[4];
    expectWithin(found.ledger.fermentables[4]?.share ?? 0, before?.share ?? 1, 1e-9);
  });

  it("ranks the nearest first, by what the row is there for", () => {
    const outcome = forMalt(2, [
      stock("Black malt", 0.7, 0.03, 1300),
      stock("Caramel malt 80L", 0.75, 0.043, 212),
      stock("Caramel malt 60L of another house", 0.75, 0.05, 155),
    ]);
    if (!outcome.ok) throw new Error(outcome.reason);
    expect(outcome.substitutes.map(({ candidate }) => candidate)).toEqual([2, 1, 0]);
    for (const { distance, unlike } of outcome.substitutes) {
      const parts = unlike.extract + unlike.colour + unlike.beerColour + unlike.mashPh + unlike.attenuation;
      expectWithin(distance, parts + unlike.alpha, 1e-12);
    }
  });

  it("counts yield by the share of the extract and colour by the share of the colour (by hand)", () => {
    const [share, colourShare] = [brewed().fermentables[0]?.share ?? 0, brewed().fermentables[0]?.colourShare ?? 0];
    const { unlike } = nearest(forMalt(0, [stock("Weak pale malt", 0.72, 0.035, 12)]));
    expectWithin(unlike.extract, share * Math.log(0.81 / 0.72), 1e-9);
    // 6 EBC is (6/1.97 + 0.76)/1.3546 = 2.809 °L, 12 EBC is 5.058 °L.
    expectWithin(unlike.colour, colourShare * Math.log(6.058 / 3.809), 1e-3);
  });

  it("counts the mash pH twice: a sour malt in the place of a fifth of the grist", () => {
    const acidity = {
      distilledWaterPh: 4.3,
      buffering: 60,
      lacticFraction: 0,
    } as unknown as FermentableStock["acidity"];
    const sour = { ...stock("Sour Munich malt", 0.8, 0.042, 14.5), acidity };
    const { unlike, ledger } = nearest(forMalt(1, [sour]));
    const fall = valueOf(brewed(), "mash.ph") - valueOf(ledger, "mash.ph");
    expect(fall).toBeGreaterThan(0.05);
    expectWithin(unlike.mashPh, 2 * fall, 1e-9);
  });

  it("counts the mash pH with the acid of the recipe, although acid is weighed out anew for the same pH", () => {
    const acidity = {
      distilledWaterPh: 4.9,
      buffering: 60,
      lacticFraction: 0,
    } as unknown as FermentableStock["acidity"];
    const sour = { ...stock("Sour Munich malt", 0.8, 0.042, 14.5), acidity };
    const recipe = {
      water: { ...paleAle.water, acid: { solution: ACID_SOLUTIONS.lactic80, ml: millilitres(8) } },
    };
    const { unlike, ledger, recipe: found } = nearest(forMalt(1, [sour], { recipe }));
    expectWithin(valueOf(ledger, "mash.ph"), valueOf(brewed({ recipe }), "mash.ph"), 1e-6);
    expect(found.water.acid?.ml ?? 8).toBeLessThan(8);
    expect(unlike.mashPh).toBeGreaterThan(0.05);
  });

  it("counts attenuation four times: sugar for malt ferments completely", () => {
    const { kg, ...white } = sugar;
    const { unlike, ledger } = nearest(forMalt(1, [white]));
    const rise = valueOf(ledger, "fermenter.attenuation") - valueOf(brewed(), "fermenter.attenuation");
    expect(rise).toBeGreaterThan(0.01);
    expectWithin(unlike.attenuation, 4 * rise, 1e-9);
  });

  it("names what changes, with both values", () => {
    const found = nearest(forMalt(0, [stock("Weak pale malt", 0.72, 0.035, 6)]));
    const grist = found.changes.find(({ quantity }) => quantity === "mash.grist");
    expect(grist).toEqual({ quantity: "mash.grist", before: 5.15, after: valueOf(found.ledger, "mash.grist") });
    expect(found.changes.map(({ quantity }) => quantity)).not.toContain("fermenter.originalExtract");
    expect(found.changes.map(({ quantity }) => quantity)).not.toContain("fermenter.colour");
  });
});

describe("no substitute for a malt", () => {
  it("is black malt for the base malt: no grist brings the colour back", () => {
    const outcome = forMalt(0, [stock("Black malt", 0.7, 0.03, 1300)]);
    expect(outcome).toEqual({
      ok: false,
      reason: "nothing-fits",
      unfit: [{ name: "Black malt", candidate: 0, reason: "colour-out-of-reach", limits: [] }],
    });
  });

  it("is white sugar for a malt that colours", () => {
    const { kg, ...white } = sugar;
    expect(forMalt(2, [white])).toMatchObject({ reason: "nothing-fits", unfit: [{ reason: "colour-out-of-reach" }] });
  });

  it("is what holds no extract", () => {
    expect(forMalt(0, [stock("Husks", 0, 0.1, 6)])).toMatchObject({ ok: false, unfit: [{ reason: "no-extract" }] });
  });

  it("is one so weak that the basket does not hold it, where the recipe kept to the limit", () => {
    const outcome = forMalt(0, [stock("Half malt", 0.4, 0.035, 6)]);
    if (outcome.ok) throw new Error("9 kg fit a basket for 8 kg");
    const [unfit] = outcome.unfit;
    expect(unfit?.reason).toBe("breaks-a-limit");
    expect(unfit?.limits.map(({ id }) => id)).toContain("grain basket");
    // With a basket that was too small before, the candidate is not to blame.
    const small: Changes = { mash: { ...garageKettle.mash, grainLimit: kilograms(4) } };
    expect(forMalt(0, [stock("Half malt", 0.4, 0.035, 6)], small)).toMatchObject({ ok: false });
    expect(forMalt(0, [stock("Weak malt", 0.75, 0.035, 6)], small).ok).toBe(true);
  });

  it("is left out of the ranking, and named beside it", () => {
    const outcome = forMalt(0, [stock("Black malt", 0.7, 0.03, 1300), stock("Pilsner malt", 0.8, 0.045, 3.5)]);
    if (!outcome.ok) throw new Error(outcome.reason);
    expect(outcome.substitutes.map(({ name }) => name)).toEqual(["Pilsner malt"]);
    expect(outcome.unfit.map(({ name, reason }) => `${name}: ${reason}`)).toEqual(["Black malt: colour-out-of-reach"]);
  });

  it("is asked for a row of nothing, an empty shelf or a recipe that does not brew", () => {
    const none = { fermentables: [...paleAle.fermentables, malt("Nothing", 0, 0.8, 0.04, 6)] };
    const any = [stock("Pilsner malt", 0.8, 0.045, 3.5)];
    expect(forMalt(4, any, { recipe: none })).toEqual({ ok: false, reason: "row-gives-nothing", unfit: [] });
    expect(forMalt(0, [])).toEqual({ ok: false, reason: "no-candidates", unfit: [] });
    expect(forMalt(0, any, { recipe: { mash: [] } })).toEqual({ ok: false, reason: "recipe-gives-no-wort", unfit: [] });
  });

  it("is what no number is: rows and candidates are held to their ranges", () => {
    const any = stock("Pilsner malt", 0.8, 0.045, 3.5);
    expect(() => forMalt(4, [any])).toThrow("row 4 is outside 0 to 3");
    expect(() => forMalt(-1, [any])).toThrow("row -1 is outside 0 to 3");
    expect(() => forMalt(0.5, [any])).toThrow("row 0.5 is outside 0 to 3");
    expect(() => forMalt(0, [{ ...any, extract: 1.1 as typeof any.extract }])).toThrow(
      "extract of the dry substance 1.1 is outside 0 to 1",
    );
    expect(() => forMalt(0, [{ ...any, colour: NaN as Ebc }])).toThrow("colour of a fermentable NaN");
    const acidity = { distilledWaterPh: 9, buffering: 40, lacticFraction: 0 } as unknown as FermentableStock["acidity"];
    expect(() => forMalt(0, [{ ...any, acidity }])).toThrow("distilled-water pH of a malt 9");
  });
});
