import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { brew } from "@/lib/calc/ledger";
import { buildRunSheet, CAUTIONS, type Step } from "@/lib/calc/runsheet";
import { celsius, litres, millilitres, minutes } from "@/lib/calc/units";
import { ACID_SOLUTIONS } from "@/lib/calc/water";
import { brewed, brewInput, valueOf } from "../../support/brewed";
import { paleAle } from "../../support/brewing-fixtures";
import { expectWithin } from "../../support/expect-within";

type Changes = Parameters<typeof brewInput>[0];

const sheet = (changes: Changes = {}): readonly Step[] =>
  buildRunSheet({ ...brewInput(changes), ledger: brewed(changes) });

const named = (steps: readonly Step[], name: Step["name"]): Step[] => steps.filter((step) => step.name === name);

const amountOf = (steps: readonly Step[], name: string): number =>
  steps.flatMap((step) => step.amounts).reduce((sum, each) => sum + (each.name === name ? each.value : 0), 0);

const UNHEATED_TUN: Changes = {
  recipe: {
    mash: [
      { celsius: celsius(52), minutes: minutes(15) },
      { celsius: celsius(63), minutes: minutes(40) },
      { celsius: celsius(72), minutes: minutes(20) },
    ],
  },
  mash: { kind: "tun", heated: false },
  lauter: { method: "batch" },
};

const WITH_ACID: Changes = {
  recipe: { water: { ...paleAle.water, acid: { solution: ACID_SOLUTIONS.lactic80, ml: millilitres(6) } } },
};

function expectInOrder(steps: readonly Step[], dayMin: number): void {
  steps.forEach((step, i) => expect(step.startMin).toBeGreaterThanOrEqual(steps[i - 1]?.startMin ?? 0));
  expect(new Set(steps.map((step) => step.id)).size).toBe(steps.length);
  expectWithin(Math.max(...steps.map((step) => step.startMin + step.minutes)), dayMin, 1e-9 * dayMin);
  for (const step of steps) expect(step.minutes).toBeGreaterThanOrEqual(0);
}

describe("buildRunSheet", () => {
  it("begins with weighing out, ends with cleaning, and takes as long as the ledger's day", () => {
    const steps = sheet();
    expect(steps[0]?.name).toBe("weigh out");
    expect(steps.at(-1)?.name).toBe("clean");
    expectInOrder(steps, valueOf(brewed(), "day.time"));
  });

  it("keeps its order, its ids and its total for any boil, method, vessel and number of mashes", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 120 }),
        fc.constantFrom("none", "batch", "continuous", "pour-over"),
        fc.constantFrom("basket", "bag", "tun"),
        fc.constantFrom(1, 2),
        fc.boolean(),
        (boil, method, kind, mashes, stand) => {
          const input = brewInput({
            recipe: { boil: minutes(boil), mashes, stand: stand ? paleAle.stand : null },
            lauter: { method },
            mash: { kind, heated: kind !== "tun" },
          });
          const outcome = brew(input);
          if (!outcome.ok) return;
          const total = outcome.ledger.quantities["day.time"];
          if (total !== null) expectInOrder(buildRunSheet({ ...input, ledger: outcome.ledger }), total);
        },
      ),
      { numRuns: 60 },
    );
  });

  it("is the same list every time", () => {
    expect(sheet()).toEqual(sheet());
  });

  it("adds each hop its minutes before the end of the boil, and the stand hops in the stand", () => {
    const steps = sheet();
    const boil = named(steps, "boil")[0];
    const stand = named(steps, "stand")[0];
    const additions = named(steps, "hop addition");
    // The fixture: 60 and 10 minutes before the end of a boil of 60, then 20 before the end of a stand of 20.
    const wanted = [boil?.startMin ?? 0, (boil?.startMin ?? 0) + 50, stand?.startMin ?? 0];
    expect(additions.map((step) => step.startMin)).toEqual(wanted);
    expect(additions.map((step) => step.amounts[0]?.value)).toEqual([18, 20, 30]);
  });

  it("puts a stand hop of a recipe without a stand at flame-out", () => {
    const steps = sheet({ recipe: { stand: null } });
    const boil = named(steps, "boil")[0];
    const last = named(steps, "hop addition").at(-1);
    expect(last?.startMin).toBe((boil?.startMin ?? 0) + 60);
  });

  it("weighs out the whole recipe, and gives it out again without losing a gram", () => {
    const steps = sheet({ recipe: { mashes: 2 } });
    const weighed = named(steps, "weigh out");
    const later = steps.filter((step) => step.name !== "weigh out");
    for (const row of paleAle.fermentables) {
      expectWithin(amountOf(weighed, row.name), row.kg, 1e-12);
      expectWithin(amountOf(later, row.name), row.kg, 1e-12);
    }
    expectWithin(amountOf(weighed, "Gypsum"), 4, 1e-12);
    expectWithin(amountOf(later, "Gypsum"), 4, 1e-12);
  });

  it("pours all the water of the ledger", () => {
    for (const changes of [{}, UNHEATED_TUN, { recipe: { topUp: litres(2), mashes: 2 } }] satisfies Changes[]) {
      const ledger = brewed(changes);
      const steps = sheet(changes);
      // Strike water and infusions, worked forward here and backward by the ledger: two methods.
      const mash = amountOf(steps, "Mash water") + amountOf(steps, "Boiling water");
      expectWithin(mash, valueOf(ledger, "water.mash"), 1e-9 * mash);
      expectWithin(amountOf(steps, "Sparge water"), valueOf(ledger, "water.sparge"), 1e-9);
      expectWithin(amountOf(steps, "Water after the boil"), valueOf(ledger, "water.topUp"), 1e-9);
    }
  });

  it("asks for each number of the hot side once, where it can be measured", () => {
    const asked = sheet().flatMap((step) => step.measure);
    expect(asked).toEqual([
      "water.mash",
      "water.strike",
      "mash.firstWort",
      "kettle.preBoilGravity",
      "kettle.preBoil",
      "kettle.heatingTime",
      "kettle.postBoil",
      "fermenter.volume",
      "fermenter.originalExtract",
    ]);
  });

  it("draws full power to ramp and less to hold", () => {
    const steps = sheet();
    for (const name of ["heat strike water", "heat between rests", "heat to the boil"] as const) {
      expect(named(steps, name)[0]?.powerW).toBe(2500);
    }
    for (const name of ["rest", "boil"] as const) expect(named(steps, name)[0]?.powerW).toBeLessThan(2500);
    expect(named(steps, "chill")[0]?.powerW).toBeNull();
  });

  it("warns of the hot basket only where one is lifted", () => {
    expect(named(sheet(), "lift and drain")[0]?.cautions).toEqual(["hot basket"]);
    expect(named(sheet(UNHEATED_TUN), "lift and drain")[0]?.cautions).toEqual(["hot liquor"]);
  });

  it("has words for every caution, and lets the electrician come first", () => {
    const used = new Set(sheet(WITH_ACID).flatMap((step) => step.cautions));
    expect([...used].sort()).toEqual(Object.keys(CAUTIONS).sort());
    expect(CAUTIONS.mains).toContain("licensed electrician come first");
  });

  it("weighs out the acid and pours it into the strike water of each mash, with its caution", () => {
    const { recipe } = WITH_ACID;
    for (const mashes of [1, 2]) {
      const steps = sheet({ recipe: { ...recipe, mashes } });
      const acid = steps.flatMap(({ name, amounts, cautions }) =>
        amounts.filter(({ unit }) => unit === "mL").map((amount) => ({ step: name, ...amount, cautions })),
      );
      const of = { name: "Lactic acid 80 %", unit: "mL", value: 6 / mashes, cautions: ["acid"] };
      const second = { ...of, step: "heat strike water", cautions: ["mains", "hot liquor", "acid"] };
      expect(acid).toEqual([
        { ...of, step: "weigh out", value: 6, cautions: [] },
        { ...of, step: "fill" },
        ...(mashes === 2 ? [second] : []),
      ]);
    }
    expect(sheet().flatMap((step) => step.cautions)).not.toContain("acid");
  });

  it("gives no step for an addition after the brew day", () => {
    // Of 100 g in the fixture, 20 g are boiled, 30 g stand and 50 g are for the fermenter.
    expect(amountOf(sheet(), "Cascade")).toBe(50);
  });
});
