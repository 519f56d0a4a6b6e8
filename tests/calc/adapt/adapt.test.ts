import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { adapt, intentionOf, type AdaptOutcome, type Intention } from "@/lib/calc/adapt";
import type { Equipment } from "@/lib/calc/ledger";
import {
  celsius,
  fraction,
  kilogramsPerHour,
  litres,
  litresPerKilogram,
  metres,
  volts,
  watts,
  wattsPerKelvin,
} from "@/lib/calc/units";
import { brewInput, brewed, exactly, valueOf } from "../../support/brewed";
import { garageKettle, malt, paleAle, sameDay } from "../../support/brewing-fixtures";
import { expectWithin } from "../../support/expect-within";
import { everyNumberOf } from "../../support/every-number-of";

const intention = intentionOf({ recipe: paleAle, ledger: brewed() });

function adaptTo(equipment: Equipment, to: Intention = intention, intoFermenter: number | null = null): AdaptOutcome {
  return adapt({
    intention: to,
    equipment,
    ambient: sameDay,
    hold: { intoFermenter: intoFermenter === null ? null : litres(intoFermenter) },
  });
}

function kettle(changes: Parameters<typeof brewInput>[0]): Equipment {
  return brewInput(changes).equipment;
}

const big = kettle({
  equipment: {
    usualBatch: litres(45),
    altitude: metres(1600),
    fermenter: { ...garageKettle.fermenter, capacity: litres(60) },
    chiller: { ...garageKettle.chiller, kind: "counterflow" },
  },
  kettle: { capacity: litres(70), ratedPower: watts(5500), boilOff: exactly(kilogramsPerHour(5)), lid: false },
  mash: { kind: "tun", capacity: litres(60), grainLimit: null, heated: false, thickest: litresPerKilogram(1.6) },
  lauter: { method: "batch", deadSpace: exactly(litres(2)), conversion: exactly(fraction(0.92)) },
});

/** Strong enough that a basket made for 8 kg does not hold its grist. */
const strong: Intention = { ...intention, originalExtract: 22 };

describe("adapt", () => {
  it("gives back the amounts on the kettle that the recipe was written for (identity)", () => {
    const outcome = adaptTo(garageKettle, intention, 21);
    if (!outcome.ok) throw new Error("does not fit its own kettle");
    outcome.recipe.fermentables.forEach((row, i) => {
      expectWithin(row.kg, paleAle.fermentables[i]?.kg ?? 0, 1e-6);
    });
    outcome.recipe.hops.forEach((hop, i) => {
      expectWithin(hop.grams, paleAle.hops[i]?.grams ?? 0, 1e-5);
    });
    expectWithin(outcome.recipe.water.salts.gypsum ?? 0, 4, 1e-6);
  });

  it.each([
    ["a large kettle at altitude with a tun of its own", big],
    ["a kettle on 110 V", kettle({ kettle: { supplyVoltage: volts(110), ratedVoltage: volts(110) } })],
    [
      "a leaky old pot with a wet bag",
      kettle({
        kettle: { lossCoefficient: exactly(wattsPerKelvin(9)) },
        mash: { kind: "bag", grainLimit: null },
        lauter: { method: "none", absorption: exactly(litresPerKilogram(0.6)) },
      }),
    ],
  ])("hits every target on %s to a millionth", (_name, equipment) => {
    const outcome = adaptTo(equipment);
    if (!outcome.ok) throw new Error(JSON.stringify(outcome.reasons));
    for (const residual of everyNumberOf(outcome.residuals)) expectWithin(residual, 0, 1e-6);
    expectWithin(valueOf(outcome.ledger, "fermenter.volume"), equipment.usualBatch, 1e-6);
    outcome.ledger.hops.forEach((hop, i) => {
      expectWithin(hop.ibu, intention.hops[i]?.ibu ?? 0, 1e-5);
    });
  });

  it("hits every target on any kettle that it says fits", () => {
    fc.assert(
      fc.property(
        fc.record({
          absorption: fc.double({ min: 0.4, max: 1.1, noNaN: true }),
          bypass: fc.double({ min: 0, max: 0.8, noNaN: true }),
          // Below, the pale malt alone nearly makes the colour, and the dark malt is not cut to less than a quarter.
          conversion: fc.double({ min: 0.86, max: 1, noNaN: true }),
          boilOff: fc.double({ min: 1, max: 3, noNaN: true }),
          altitude: fc.integer({ min: 0, max: 2500 }),
          method: fc.constantFrom("none" as const, "batch" as const, "continuous" as const, "pour-over" as const),
          lid: fc.boolean(),
        }),
        ({ absorption, bypass, conversion, boilOff, altitude, method, lid }) => {
          const outcome = adaptTo(
            kettle({
              equipment: { altitude: metres(altitude) },
              kettle: { boilOff: exactly(kilogramsPerHour(boilOff)), lid },
              lauter: {
                method,
                absorption: exactly(litresPerKilogram(absorption)),
                bypass: exactly(fraction(bypass)),
                conversion: exactly(fraction(conversion)),
              },
            }),
          );
          if (!outcome.ok) return;
          for (const residual of everyNumberOf(outcome.residuals)) expectWithin(residual, 0, 1e-6);
        },
      ),
      { numRuns: 60 },
    );
  }, 60_000);

  it("needs more than proportional grain for a stronger beer, because the lauter efficiency falls", () => {
    const grist = (plato: number): number => {
      const outcome = adaptTo(
        kettle({ mash: { grainLimit: null, capacity: litres(80) }, kettle: { capacity: litres(80) } }),
        { ...intention, originalExtract: plato },
      );
      if (!outcome.ok) throw new Error("does not fit");
      return valueOf(outcome.ledger, "mash.grist");
    };
    expect(grist(18) / grist(12)).toBeGreaterThan(18 / 12);
  });

  it("keeps the colour by the dark malt, not by the pale one", () => {
    const lossy = adaptTo(kettle({ lauter: { conversion: exactly(fraction(0.8)) } }));
    if (!lossy.ok) throw new Error("does not fit");
    const share = (i: number): number => (lossy.recipe.fermentables[i]?.kg ?? 0) / (paleAle.fermentables[i]?.kg ?? 1);
    expect(share(0)).toBeGreaterThan(1.1);
    expect(share(2)).toBeLessThan(share(0));
    expectWithin(lossy.residuals.colour, 0, 1e-9);
  });

  it("names the broken limits and at least three ways out that keep them all, nearest first", () => {
    const outcome = adaptTo(garageKettle, strong);
    if (outcome.ok) throw new Error("22 °P fits a basket for 8 kg");
    expect(outcome.reasons.map((limit) => limit.id)).toContain("grain basket");
    expect(outcome.waysOut.length).toBeGreaterThanOrEqual(3);
    const distances = outcome.waysOut.map((way) => way.distance);
    expect(distances).toEqual([...distances].sort((a, b) => a - b));
    for (const way of outcome.waysOut) {
      expect(
        way.ledger.limits.filter((limit) => !limit.ok).map((limit) => limit.id),
        way.kind,
      ).toEqual([]);
      expectWithin(valueOf(way.ledger, "fermenter.originalExtract"), 22, 1e-5);
    }
  });

  it("fills the basket to its limit when it brews less", () => {
    const outcome = adaptTo(garageKettle, strong);
    if (outcome.ok) throw new Error("22 °P fits a basket for 8 kg");
    const less = outcome.waysOut.find((way) => way.kind === "less volume");
    expectWithin(less === undefined ? 0 : valueOf(less.ledger, "mash.grist"), 8, 0.02);
  });

  it("offers more volume where the element would be dry", () => {
    const outcome = adaptTo(kettle({ kettle: { minimum: litres(16) } }), intention, 9);
    if (outcome.ok) throw new Error("9 L covers an element that needs 16 L");
    expect(outcome.reasons.map((limit) => limit.id)).toContain("element covered");
    expect(outcome.waysOut.map((way) => way.kind)).toContain("more volume");
  });

  it("finds at least three ways out for a tun that cannot be heated to the last rest", () => {
    const tun = kettle({
      mash: { kind: "tun", heated: false, grainLimit: null },
      lauter: { method: "batch" },
      kettle: { lid: false },
    });
    const outcome = adaptTo(tun);
    if (outcome.ok) throw new Error("66 to 76 °C by infusion at 3 L/kg");
    expect(outcome.reasons.map((limit) => limit.id)).toEqual(["mash steps"]);
    expect(outcome.waysOut.map((way) => way.kind).sort()).toEqual([
      "fewer rests",
      "gentler steps",
      "one rest instead",
      "thinner mash",
    ]);
  });

  it("tries two changes together where one does not do", () => {
    const tun = kettle({
      mash: { kind: "tun", heated: false, grainLimit: null, capacity: litres(30) },
      lauter: { method: "batch" },
    });
    const outcome = adaptTo(tun, strong);
    if (outcome.ok) throw new Error("22 °P by infusion in a 30 L tun");
    expect(outcome.reasons.map((limit) => limit.id)).toEqual(["mash volume", "mash steps"]);
    expect(outcome.waysOut.some((way) => way.also === "fewer rests")).toBe(true);
    expect(outcome.waysOut.length).toBeGreaterThanOrEqual(3);
  });

  it("finds ways out even where no grist reaches the strength", () => {
    const sponge = kettle({ lauter: { method: "none", absorption: exactly(litresPerKilogram(2.5)) } });
    const outcome = adaptTo(sponge, { ...intention, originalExtract: 26 });
    if (outcome.ok) throw new Error("26 °P from a sponge");
    expect(outcome.waysOut.map((way) => way.kind)).toContain("malt extract for part of the grist");
  });

  it("keeps the sum of the shares when malt extract stands in for malt", () => {
    const outcome = adaptTo(garageKettle, strong);
    if (outcome.ok) throw new Error("22 °P fits a basket for 8 kg");
    const extract = outcome.waysOut.find((way) => way.kind === "malt extract for part of the grist");
    const shares = extract?.ledger.fermentables.reduce((sum, row) => sum + row.share, 0) ?? 0;
    expectWithin(shares, 1, 1e-9);
  });

  it("adapts a beer of one pale malt, and says that its colour cannot be held", () => {
    const single = brewInput({ recipe: { fermentables: [malt("Pilsner malt", 5, 0.81, 0.045, 3)] } });
    const single1 = intentionOf({ recipe: single.recipe, ledger: brewed({ recipe: single.recipe }) });
    const outcome = adaptTo(kettle({ lauter: { conversion: exactly(fraction(0.8)) } }), single1);
    if (!outcome.ok) throw new Error("does not fit");
    expectWithin(outcome.residuals.originalExtract, 0, 1e-6);
    expect(Math.abs(outcome.residuals.colour)).toBeGreaterThan(0.01);
  });

  it("works in cold weather as in warm", () => {
    for (const air of [0, 35]) {
      const outcome = adapt({
        intention,
        equipment: garageKettle,
        ambient: { ...sameDay, air: celsius(air) },
        hold: { intoFermenter: null },
      });
      expect(outcome.ok).toBe(true);
    }
  });
});
