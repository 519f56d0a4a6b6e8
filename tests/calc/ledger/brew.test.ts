import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { brew, type Ledger, type Stream } from "@/lib/calc/ledger";
import { celsius, fraction, kilograms, kilogramsPerHour, litres, litresPerKilogram, minutes } from "@/lib/calc/units";
import { brewed, brewInput, exactly, valueOf } from "../../support/brewed";
import { malt, paleAle } from "../../support/brewing-fixtures";
import { expectWithin } from "../../support/expect-within";

function expectBalanced(ledger: Ledger): void {
  for (const balance of ledger.balances) {
    const massIn = balance.in.reduce((sum, stream) => sum + stream.kg, 0);
    const extractIn = balance.in.reduce((sum, stream) => sum + stream.extractKg, 0);
    expect(Math.abs(balance.massErrorKg), `mass at ${balance.station}`).toBeLessThanOrEqual(1e-9 * massIn);
    expect(Math.abs(balance.extractErrorKg), `extract at ${balance.station}`).toBeLessThanOrEqual(
      1e-9 * extractIn + 1e-15,
    );
  }
}

const NO_LOSS_KETTLE = {
  boilOff: exactly(kilogramsPerHour(0)),
  trub: exactly(litres(0)),
  transfer: exactly(litres(0)),
};
const NO_LOSS_LAUTER = {
  method: "none" as const,
  absorption: exactly(litresPerKilogram(0)),
  deadSpace: exactly(litres(0)),
  conversion: exactly(fraction(1)),
};

describe("brew", () => {
  it("balances mass and extract at every station (conservation)", () => {
    expectBalanced(brewed());
  });

  it("balances for any grist, volume, boil and sparge (conservation)", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 9, noNaN: true }),
        fc.double({ min: 8, max: 40, noNaN: true }),
        fc.integer({ min: 0, max: 120 }),
        fc.constantFrom("none", "batch", "continuous", "pour-over"),
        fc.boolean(),
        (kg, volume, boil, method, lid) => {
          const outcome = brew(
            brewInput({
              recipe: {
                intoFermenter: litres(volume),
                boil: minutes(boil),
                fermentables: [malt("Pale ale malt", kg, 0.8, 0.04, 6)],
              },
              lauter: { method },
              kettle: { lid },
            }),
          );
          if (!outcome.ok) return;
          expectBalanced(outcome.ledger);
          expectWithin(valueOf(outcome.ledger, "fermenter.volume"), volume, 1e-8 * volume);
        },
      ),
    );
  });

  it("hands over to each station what left the one before", () => {
    const { balances } = brewed();
    const named = (streams: readonly Stream[]): Map<string, number> =>
      new Map(streams.map((each) => [each.name, each.kg]));
    for (let i = 1; i < balances.length; i++) {
      const before = named(balances[i - 1]?.out ?? []);
      for (const stream of balances[i]?.in ?? []) {
        if (before.has(stream.name)) expect(before.get(stream.name)).toBe(stream.kg);
      }
    }
  });

  it("gives 17.91 °P from 5 kg of malt in 20 L without any loss (docs/worked-examples.md#no-loss)", () => {
    const ledger = brewed({
      recipe: {
        intoFermenter: litres(20),
        boil: minutes(0),
        stand: null,
        hops: [],
        fermentables: [malt("Malt", 5, 0.8, 0.04, 6)],
      },
      kettle: NO_LOSS_KETTLE,
      lauter: NO_LOSS_LAUTER,
    });
    expectWithin(valueOf(ledger, "fermenter.originalExtract"), 17.91, 0.01);
    expectWithin(valueOf(ledger, "fermenter.efficiency"), 1, 1e-12);
  });

  it("loses efficiency as the grist grows", () => {
    const efficiencies = [3, 4, 5, 6, 7].map((kg) =>
      valueOf(brewed({ recipe: { fermentables: [malt("Malt", kg, 0.8, 0.04, 6)] } }), "lauter.efficiency"),
    );
    expect(efficiencies).toEqual([...efficiencies].sort((a, b) => b - a));
  });

  it("boils off the stated rate for the stated time", () => {
    const kettle = brewed({
      kettle: { boilOff: exactly(kilogramsPerHour(3)) },
      recipe: { boil: minutes(90) },
    }).balances.find((balance) => balance.station === "kettle");
    expectWithin(kettle?.lost[0]?.kg ?? 0, 4.5, 1e-9);
  });

  it("dilutes strength and bitterness alike with water after the boil", () => {
    const plain = brewed();
    const diluted = brewed({ recipe: { topUp: litres(4) } });
    const boiled = valueOf(diluted, "fermenter.volume") - 4;
    expect(boiled).toBeCloseTo(17, 6);
    expect(valueOf(diluted, "kettle.postBoilGravity")).toBeGreaterThan(valueOf(plain, "kettle.postBoilGravity"));
    const lastBalance = diluted.balances.find((balance) => balance.station === "fermenter");
    expectWithin(lastBalance?.in[1]?.kg ?? 0, 4 * 0.998204, 1e-4);
  });

  it("counts the extract of all rows once", () => {
    const ledger = brewed();
    expectWithin(
      ledger.fermentables.reduce((sum, row) => sum + row.share, 0),
      1,
      1e-12,
    );
    expectWithin(
      ledger.fermentables.reduce((sum, row) => sum + row.colourShare, 0),
      1,
      1e-12,
    );
  });

  it("heats infusions for a tun that has no heater of its own, and none for a step down", () => {
    const steps = [52, 65, 60].map((c) => ({ celsius: celsius(c), minutes: minutes(20) }));
    const ledger = brewed({
      recipe: { mash: steps, thickness: litresPerKilogram(4) },
      mash: { heated: false, kind: "tun" },
    });
    const limit = ledger.limits.find((each) => each.id === "mash steps");
    expect(limit?.value).toBeLessThan(4);
    expect(limit?.value).toBeGreaterThan(2.5);
  });

  it.each([
    ["no-fermentable", { recipe: { fermentables: [] } }],
    ["no-mash-step", { recipe: { mash: [] } }],
    ["grain-holds-all-water", { lauter: { absorption: exactly(litresPerKilogram(4)) } }],
  ] as const)("says %s where nothing can be brewed", (reason, changes) => {
    expect(brew(brewInput(changes))).toMatchObject({ ok: false, reason });
  });

  it("refuses worts past 35 °P instead of extrapolating", () => {
    const syrup = { ...malt("Syrup", 8, 1, 0, 0), kind: "sugar" as const, station: "kettle" as const };
    const outcome = brew(brewInput({ recipe: { fermentables: [...paleAle.fermentables, syrup] } }));
    expect(outcome).toMatchObject({ ok: false, reason: "too-strong" });
  });

  it("mashes twice in half the vessel and pays for it in time", () => {
    const once = brewed();
    const twice = brewed({ recipe: { mashes: 2 } });
    expectWithin(valueOf(twice, "mash.volume"), valueOf(once, "mash.volume") / 2, 0.2);
    expect(valueOf(twice, "day.time")).toBeGreaterThan(valueOf(once, "day.time") + 60);
    expectBalanced(twice);
  });

  it("is the same to the last bit for the same input", () => {
    expect(brewed()).toEqual(brewed());
  });

  it("weighs grain in kilograms, not in grams", () => {
    expectWithin(
      valueOf(brewed({ recipe: { fermentables: [malt("Malt", 4.5, 0.8, 0.04, 6)] } }), "mash.grist"),
      kilograms(4.5),
      0,
    );
  });
});
