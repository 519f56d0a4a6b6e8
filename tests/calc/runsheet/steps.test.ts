import { describe, expect, it } from "vitest";
import type { Ledger, PhaseName, QuantityId } from "@/lib/calc/ledger";
import { buildRunSheet, type Step } from "@/lib/calc/runsheet";
import type { kilograms } from "@/lib/calc/units";
import { grams, minutes } from "@/lib/calc/units";
import { brewed, brewInput, valueOf } from "../../support/brewed";
import { malt, paleAle } from "../../support/brewing-fixtures";
import { expectWithin } from "../../support/expect-within";

type Changes = Parameters<typeof brewInput>[0];

const sheet = (changes: Changes = {}, ledger: Ledger = brewed(changes)): readonly Step[] =>
  buildRunSheet({ ...brewInput(changes), ledger });

const named = (steps: readonly Step[], name: Step["name"]): Step[] => steps.filter((step) => step.name === name);

const only = (steps: readonly Step[], name: Step["name"]): Step => {
  const [step, ...more] = named(steps, name);
  if (step === undefined || more.length > 0) throw new Error(`${more.length + 1} steps ${name}`);
  return step;
};

const phaseOf = (ledger: Ledger, name: PhaseName): Ledger["phases"][number] => {
  const phase = ledger.phases.find((each) => each.name === name);
  if (phase === undefined) throw new Error(`no phase ${name}`);
  return phase;
};

const TWO_MASHES: Changes = { recipe: { mashes: 2 } };

describe("a step", () => {
  it.each([
    "heat strike water",
    "dough in",
    "rest",
    "heat between rests",
    "boil",
    "cool to the stand",
    "chill",
    "transfer",
  ] as const)("has the time, temperature and power of its phase: %s", (name) => {
    const phase = phaseOf(brewed(), name);
    expect(named(sheet(), name)[0]).toMatchObject({
      startMin: phase.startMin,
      minutes: phase.minutes,
      celsius: phase.toC,
      powerW: phase.powerW > 0 ? phase.powerW : null,
    });
  });

  it("has the volume of its phase, and none where nothing is in a vessel", () => {
    const ledger = brewed();
    for (const name of ["heat strike water", "dough in", "rest", "transfer"] as const) {
      expect(named(sheet(), name)[0]?.litres).toBe(phaseOf(ledger, name).litres);
    }
    expect(only(sheet(), "clean")).toMatchObject({ litres: null, celsius: null, powerW: null, amounts: [] });
    expect(only(sheet(), "weigh out")).toMatchObject({ litres: null, celsius: null, measure: [] });
  });

  it("says how much wort there is before and after the boil, hot", () => {
    const ledger = brewed();
    for (const name of ["heat to the boil", "hot-break watch", "boil"] as const) {
      expect(only(sheet(), name).litres).toBe(valueOf(ledger, "kettle.preBoil"));
    }
    for (const name of ["cool to the stand", "stand", "chill"] as const) {
      expect(only(sheet(), name).litres).toBe(valueOf(ledger, "kettle.postBoil"));
    }
  });

  it("carries a number, where several have its name", () => {
    expect(named(sheet(), "rest").map(({ id }) => id)).toEqual(["rest-1", "rest-2"]);
    expect(named(sheet(), "hop addition").map(({ id }) => id)).toEqual([
      "hop-addition-1",
      "hop-addition-2",
      "hop-addition-3",
    ]);
    expect(only(sheet(), "boil").id).toBe("boil-1");
  });
});

describe("the watch over the hot break", () => {
  const boilStart = (changes: Changes = {}): number => phaseOf(brewed(changes), "boil").startMin;

  it("lies from five minutes before the boil to five minutes into it (common practice, no source)", () => {
    expectWithin(only(sheet(), "hot-break watch").startMin, boilStart() - 5, 1e-9);
    expectWithin(only(sheet(), "hot-break watch").minutes, 10, 1e-9);
    expect(only(sheet(), "hot-break watch")).toMatchObject({ cautions: ["boil-over"], measure: [], amounts: [] });
  });

  it("is no longer than a short boil", () => {
    const short: Changes = { recipe: { boil: minutes(3) } };
    expectWithin(only(sheet(short), "hot-break watch").startMin, boilStart(short) - 5, 1e-9);
    expectWithin(only(sheet(short), "hot-break watch").minutes, 8, 1e-9);
  });

  it("begins no earlier than the heating", () => {
    const ledger = brewed();
    const quick = {
      ...ledger,
      phases: ledger.phases.map((phase) => (phase.name === "heat to the boil" ? { ...phase, minutes: 2 } : phase)),
    };
    expectWithin(only(sheet({}, quick), "hot-break watch").startMin, phaseOf(quick, "heat to the boil").startMin, 1e-9);
    expectWithin(only(sheet({}, quick), "hot-break watch").minutes, 7, 1e-9);
  });
});

describe("what goes in", () => {
  const amounts = (step: Step): string[] => step.amounts.map(({ name }) => name);

  it("is the grist at doughing in, the sugar in the boil, and the yeast at pitching", () => {
    expect(amounts(only(sheet(), "dough in"))).toEqual(["Pale ale malt", "Munich malt light", "Caramel malt 60L"]);
    expect(only(sheet(), "boil").amounts).toEqual([{ name: "Sucrose", value: 0.2, unit: "kg" }]);
    expect(only(sheet(), "pitch").amounts).toEqual([
      { name: "American ale, clean", value: valueOf(brewed(), "fermenter.cells"), unit: "billion cells" },
    ]);
    expect(only(sheet(), "pitch")).toMatchObject({ celsius: 19, minutes: 0, cautions: ["closed room", "pressure"] });
  });

  it("is half of the grist for each of two mashes", () => {
    for (const step of named(sheet(TWO_MASHES), "dough in")) expect(step.amounts[0]?.value).toBe(2.2);
    expect(named(sheet(TWO_MASHES), "dough in")).toHaveLength(2);
  });

  it("leaves out rows of nothing, salts of nothing and water of nothing", () => {
    const nothing = { ...malt("Nothing", 0, 0.8, 0.04, 6) };
    const none: Changes = {
      recipe: {
        fermentables: [...paleAle.fermentables, nothing, { ...nothing, name: "No sugar", station: "kettle" }],
        water: { ...paleAle.water, salts: { gypsum: grams(4), chalk: grams(0) } },
      },
    };
    const all = sheet(none).flatMap(amounts);
    expect(all).not.toContain("Nothing");
    expect(all).not.toContain("No sugar");
    expect(all).not.toContain("Chalk");
    expect(all).not.toContain("Water after the boil");
    expect(
      sheet(none)
        .flatMap(({ amounts: of }) => of)
        .every(({ value }) => value > 0),
    ).toBe(true);
    expect(named(sheet(none), "rest").map(amounts)).toEqual([[], []]);
  });

  it("shares the salts between mash and sparge as the water is shared", () => {
    const ledger = brewed();
    const [mash, sparge] = [valueOf(ledger, "water.mash"), valueOf(ledger, "water.sparge")];
    const gypsum = (step: Step): number => step.amounts.find(({ name }) => name === "Gypsum")?.value ?? NaN;
    expectWithin(gypsum(only(sheet(), "fill")), (4 * mash) / (mash + sparge), 1e-9);
    expectWithin(gypsum(only(sheet(), "sparge")), (4 * sparge) / (mash + sparge), 1e-9);
    expect(amounts(only(sheet(), "heat strike water"))).toEqual([]);
  });

  it("is what was meant for the stand at flame-out, where there is no stand, and no dry hop", () => {
    const additions = named(sheet({ recipe: { stand: null } }), "hop addition");
    expect(additions.map((step) => step.amounts[0]?.value)).toEqual([18, 20, 30]);
    for (const step of additions) expect(step).toMatchObject({ minutes: 0, litres: null, powerW: null, measure: [] });
  });
});

describe("what is measured", () => {
  const measuredAt = (steps: readonly Step[], id: QuantityId): string[] =>
    steps.filter((step) => step.measure.includes(id)).map((step) => step.name);

  it("is the wort at the end of the boil in the first step after it", () => {
    expect(measuredAt(sheet(), "kettle.postBoil")).toEqual(["cool to the stand"]);
    expect(measuredAt(sheet({ recipe: { stand: null } }), "kettle.postBoil")).toEqual(["chill"]);
  });

  it("is the mash water only where all of it is filled at once", () => {
    expect(measuredAt(sheet(), "water.mash")).toEqual(["fill"]);
    expect(measuredAt(sheet(TWO_MASHES), "water.mash")).toEqual([]);
  });

  it("is nothing that was not predicted", () => {
    const ledger = brewed();
    const unknown: Partial<Ledger["quantities"]> = { "mash.firstWort": null, "fermenter.cells": null };
    const steps = sheet({}, { ...ledger, quantities: { ...ledger.quantities, ...unknown } });
    expect(measuredAt(steps, "mash.firstWort")).toEqual([]);
    expect(only(steps, "pitch").amounts).toEqual([]);
    expect(measuredAt(sheet(), "mash.firstWort")).toEqual(["lift and drain"]);
  });
});

describe("the run-off", () => {
  it("is all there is after draining where nothing is sparged, and after sparging where it is", () => {
    const still: Changes = { lauter: { method: "none" }, recipe: { thickness: null } };
    expect(only(sheet(still), "lift and drain").litres).toBe(valueOf(brewed(still), "lauter.runOff"));
    expect(only(sheet(), "lift and drain").litres).toBeNull();
    expect(only(sheet(), "sparge")).toMatchObject({ litres: valueOf(brewed(), "lauter.runOff"), celsius: 76 });
  });

  it("grows from mash to mash", () => {
    const all = valueOf(brewed(TWO_MASHES), "lauter.runOff");
    expect(named(sheet(TWO_MASHES), "sparge").map(({ litres }) => litres)).toEqual([all / 2, all]);
  });
});

describe("a sheet that cannot be", () => {
  it("is refused by the number that is none", () => {
    const [first, ...rest] = paleAle.fermentables;
    if (first === undefined) throw new Error("the fixture has rows");
    const fermentables = [{ ...first, kg: NaN as ReturnType<typeof kilograms> }, ...rest];
    const { recipe, equipment } = brewInput();
    const ledger = brewed();
    expect(() => buildRunSheet({ ledger, equipment, recipe: { ...recipe, fermentables } })).toThrow("fermentable NaN");
    const hot = { ...equipment, altitude: -500 as typeof equipment.altitude };
    expect(() => buildRunSheet({ ledger, equipment: hot, recipe })).toThrow("altitude -500 m");
  });
});
