import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { MEASURABLE, reconcile, type ComparedReading, type ReconciledLedger } from "@/lib/calc/compare";
import { wortDensity } from "@/lib/calc/gravity";
import { brew, intervals } from "@/lib/calc/ledger";
import { celsius, degreesPlato, fraction, litres } from "@/lib/calc/units";
import { brewed, brewedOtherwise, brewInput, exactly, valueOf } from "../../support/brewed";
import { expectWithin } from "../../support/expect-within";
import { days, kettles, recipes } from "../../support/random-brews";
import { readingsOf } from "../../support/readings-of";

const ledger = brewed();
const predicted = intervals(brewInput());
const reconciledOf = (readings: readonly ComparedReading[]): ReconciledLedger =>
  reconcile({ ledger, intervals: predicted, readings });

function quantityOf({ reconciled }: ReconciledLedger, id: ReconciledLedger["reconciled"][number]["quantity"]) {
  const found = reconciled.find(({ quantity }) => quantity === id);
  if (found === undefined) throw new Error(`no ${id}`);
  return found;
}

describe("reconcile", () => {
  it("keeps what agrees: readings as planned stay, are less uncertain than read, and the test passes", () => {
    const result = reconciledOf(readingsOf(ledger));
    for (const { reconciled, planned, reconciledSd, measuredSd } of result.reconciled) {
      expectWithin(reconciled, planned, 1e-6 * planned);
      expect(reconciledSd).toBeLessThanOrEqual((measuredSd ?? 0) * (1 + 1e-6));
    }
    expectWithin(result.balance.chiSquared, 0, 1e-6);
    // Seven readings, each checked once by the plan's figures; the mash water takes the place of one of these.
    expect([result.balance.verdict, result.balance.df]).toEqual(["close", 7]);
    expect(result.balance.words).toContain("agree with each other and with the kettle’s figures");
  });

  it("weighs one reading against the plan as two readings of one thing (closed form)", () => {
    const interval = predicted["package.volume"] ?? { low80: Number.NaN, high80: Number.NaN };
    const plannedSd = (interval.high80 - interval.low80) / (2 * 1.2815515655446004);
    const planned = valueOf(ledger, "package.volume");
    const result = reconciledOf([{ quantity: "package.volume", value: planned - 2, sd: 0.3 }]);
    // The plan's uncertainty of the packaged volume, as the figures make it, is that of the interval but for the parts
    // that move two figures at once; so the weights are those of 0.3 L and about that.
    const { reconciled, reconciledSd, z } = quantityOf(result, "package.volume");
    const own = reconciledSd ?? 0;
    const others = 1 / Math.sqrt(1 / own ** 2 - 1 / 0.3 ** 2);
    expectWithin(others, plannedSd, 0.35 * plannedSd);
    // A straight line but for the little that the strength of the wort changes with its volume.
    expectWithin(reconciled, planned - (2 * others ** 2) / (others ** 2 + 0.3 ** 2), 0.01);
    expectWithin(Math.abs(z ?? 0), 2 / Math.hypot(others, 0.3), 0.01);
    expect(result.balance.df).toBe(1);
    expectWithin(result.balance.chiSquared, (z ?? 0) ** 2, 1e-9);
  });

  it("says that nothing is tested where nothing was read", () => {
    const { balance, reconciled } = reconciledOf([]);
    expect(balance).toMatchObject({ verdict: "untested", df: 0, p: 1 });
    expect(balance.words).toContain("No reading");
    for (const each of reconciled) expectWithin(each.reconciled, each.planned, 1e-8 * each.planned);
  });

  it("names the wrong reading, leaves it out, and gives it the value that it should have had", () => {
    const right = valueOf(ledger, "fermenter.volume");
    const result = reconciledOf(readingsOf(ledger, { "fermenter.volume": right + 4 }));
    expect(result.balance.verdict).toBe("reading doubted");
    expect(result.balance.p).toBeLessThan(0.01);
    expect(result.balance.afterwards?.p).toBeGreaterThan(0.9);
    const { reconciled, isSuspect, measured } = quantityOf(result, "fermenter.volume");
    expect([isSuspect, measured]).toEqual([true, right + 4]);
    expectWithin(reconciled, right, 1e-3);
    expectWithin(result.suspects[0]?.shouldBe ?? 0, reconciled, 0.01);
  });

  it("says that the kettle did otherwise where all readings show it", () => {
    const kept = reconciledOf(readingsOf(brewedOtherwise({ kettle: { trub: exactly(litres(6)) } })));
    expect(kept.balance).toMatchObject({ verdict: "kettle otherwise", departures: ["leftKg"] });
    expect(kept.balance.words).toContain("what stayed with trub, hops and hoses");
    const poor = brewedOtherwise({ lauter: { conversion: exactly(fraction(0.75)) } });
    const mashed = reconciledOf(readingsOf(poor));
    expect(mashed.balance.departures).toEqual(["dissolvedKg"]);
    // The account tells the brew as it was, not as planned: the mash dissolved 75 % where 95 % were planned.
    const undissolved = mashed.extract.lines.find(({ id }) => id === "undissolved");
    const truth = valueOf(poor, "mash.potential") - valueOf(poor, "mash.dissolved");
    expectWithin(undissolved?.kg ?? 0, truth, 0.02);
    expect(undissolved?.restsOn).toBe("readings");
  });

  it("adds up over random brews and readings, and holds what its own volumes and strengths weigh (law)", () => {
    const noises = fc.array(fc.double({ min: -3, max: 3, noNaN: true }), { minLength: 11, maxLength: 11 });
    let told = 0;
    fc.assert(
      fc.property(recipes, kettles, days, noises, fc.nat(2047), (recipe, equipment, ambient, noise, mask) => {
        const outcome = brew({ recipe, equipment, ambient });
        if (!outcome.ok) return;
        const readings = readingsOf(outcome.ledger)
          // A strike temperature that nobody could read has a plan all the same.
          .filter(({ quantity }) => ["volume", "gravity"].includes(MEASURABLE[quantity].kind))
          .map((each, i) => ({ ...each, value: Math.max(0, each.value + each.sd * (noise[i] ?? 0)) }))
          .map((each) =>
            MEASURABLE[each.quantity].kind === "gravity" ? { ...each, value: Math.min(35, each.value) } : each,
          )
          .filter((_, i) => ((mask >> i) & 1) === 1);
        const predictions = intervals({ recipe, equipment, ambient });
        const result = reconcile({ ledger: outcome.ledger, intervals: predictions, readings });
        const { lines, weighedOutKg } = result.extract;
        const kg = Object.fromEntries(lines.map((line) => [line.id, line.kg]));
        const losses = lines.filter(({ effect }) => effect === "loses").reduce((sum, line) => sum + line.kg, 0);
        expectWithin(losses + (kg.residual ?? Number.NaN), weighedOutKg, 1e-9 * weighedOutKg);
        const litres = quantityOf(result, "fermenter.volume").reconciled;
        const plato = quantityOf(result, "fermenter.originalExtract").reconciled;
        if (plato < 0 || plato > 35) return;
        const density = wortDensity({ plato: degreesPlato(plato), celsius: celsius(20) });
        expectWithin(kg.fermenter ?? Number.NaN, (litres * density * plato) / 100, 1e-9 * weighedOutKg);
        told++;
      }),
      { numRuns: 120, endOnFailure: true },
    );
    expect(told).toBeGreaterThan(40);
  }, 30_000);

  it("refuses what compareLedger refuses", () => {
    expect(() => reconciledOf([{ quantity: "kettle.preBoil", value: -1, sd: 0.3 }])).toThrow("is outside");
  });
});
