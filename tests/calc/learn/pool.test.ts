import { describe, expect, it } from "vitest";
import { driftTest, pool, type BrewEvidence } from "@/lib/calc/learn";
import { FIGURES, type Equipment } from "@/lib/calc/ledger";
import { partialPooling } from "@/lib/calc/statistics";
import { litres } from "@/lib/calc/units";
import { DYESTUFF } from "../../reference/variance-components";
import { brewInput } from "../../support/brewed";
import { tellingOf } from "../../support/telling-of";
import { expectWithin } from "../../support/expect-within";

/** Every figure as typical of its kind. */
const typical: Equipment = FIGURES.reduce(
  (made, { of, withFigure }) => withFigure(made, { ...of(made), from: "typical", count: 0 }),
  brewInput().equipment,
);
const kettleWith = (...brews: readonly BrewEvidence[]) => ({ typical, equipment: typical, brews });
const boilOffOf = (equipment: Equipment) => equipment.kettle.boilOff;

describe("pool", () => {
  it("starts a new kettle from the typical figures when nobody has brewed", () => {
    expect(pool({ start: typical, kettles: [] }).start.equipment).toEqual(typical);
    expect(pool({ start: typical, kettles: [kettleWith()] }).start.equipment).toEqual(typical);
  });

  it("comes to the spread between batches of dyestuff: 42 g by restricted likelihood (Davies 1972, section 6.4)", () => {
    // Mean square within batches, as printed.
    const meanSquareWithin = 2451.25;
    const units = DYESTUFF.map((batch) => ({
      estimate: batch.reduce((sum, each) => sum + each, 0) / batch.length,
      standardError: Math.sqrt(meanSquareWithin / batch.length),
    }));
    // The yield plays the trub, a litre to the gram, with a typical uncertainty that says next to nothing.
    const start = {
      ...typical,
      kettle: { ...typical.kettle, trub: { value: litres(1500), sd: 1500, from: "typical", count: 0 } },
    } as const;
    const kettles = units.map(({ estimate, standardError }) => ({
      typical: start,
      equipment: {
        ...start,
        kettle: {
          ...start.kettle,
          trub: {
            ...start.kettle.trub,
            value: litres(estimate),
            sd: standardError,
            from: "measured",
            count: 1,
          } as const,
        },
      },
      brews: [],
    }));
    const trub = pool({ start, kettles }).figures.find(({ name }) => name === "kettle.trub");
    const flat = partialPooling(units);
    if (trub === undefined) throw new Error("no trub");
    expect(trub.kettles).toBe(6);
    expectWithin(trub.mean, 1527.5, 2);
    expect(trub.betweenLow80).toBeLessThan(42);
    expect(trub.betweenHigh80).toBeGreaterThan(42);
    // Second method: a flat prior on the spread, which so wide a half-normal one nearly is.
    expectWithin(trub.betweenSd, flat.betweenSd, 0.02 * flat.betweenSd);
    expectWithin(trub.betweenLow80, flat.betweenLow80, 0.03 * flat.betweenLow80);
  });

  it("draws a kettle towards its kind, the less the more it has brewed", () => {
    const others = Array.from({ length: 8 }, () =>
      kettleWith(...Array.from({ length: 5 }, () => tellingOf("kettle.boilOff", 2.4, 0.1))),
    );
    const after = (brews: number): number => {
      const own = kettleWith(...Array.from({ length: brews }, () => tellingOf("kettle.boilOff", 3, 0.3)));
      const { kettles } = pool({ start: typical, kettles: [own, ...others] });
      return boilOffOf(kettles[0]?.equipment ?? typical).value;
    };
    expect(after(0)).toBeCloseTo(2.4, 1);
    expect(after(1)).toBeGreaterThan(after(0));
    expect(after(8)).toBeGreaterThan(after(1));
    expect(after(8)).toBeLessThan(3);
  });

  it("compares a small and a large kettle by how far they are from what is typical of their size", () => {
    const large: Equipment = {
      ...typical,
      kettle: {
        ...typical.kettle,
        boilOff: {
          ...boilOffOf(typical),
          value: 2 * boilOffOf(typical).value,
          sd: 2 * boilOffOf(typical).sd,
        } as Equipment["kettle"]["boilOff"],
      },
    };
    const brews = Array.from({ length: 4 }, () => tellingOf("kettle.boilOff", 2.7, 0.1));
    const kettles = [kettleWith(...brews), kettleWith(...brews)];
    const start = boilOffOf(pool({ start: large, kettles }).start.equipment).value;
    const same = boilOffOf(pool({ start: typical, kettles }).start.equipment).value;
    expect(start).toBeCloseTo(2 * same, 6);
    expect(same).toBeGreaterThan(2.4);
    expect(same).toBeLessThan(2.7);
  });

  it("takes what was measured on a kettle as known of that kettle", () => {
    const measured = {
      ...typical,
      kettle: { ...typical.kettle, boilOff: { ...boilOffOf(typical), value: 3, sd: 0.02, from: "measured", count: 1 } },
    } as Equipment;
    const { kettles, figures } = pool({ start: typical, kettles: [{ typical, equipment: measured, brews: [] }] });
    expect(boilOffOf(kettles[0]?.equipment ?? typical).value).toBeCloseTo(3, 1);
    expect(figures.find(({ name }) => name === "kettle.boilOff")).toMatchObject({ kettles: 1, brews: 0 });
  });
});

describe("driftTest", () => {
  const course = (...rates: readonly number[]): BrewEvidence[] =>
    rates.map((rate) => tellingOf("kettle.boilOff", rate, 0.1));

  it("finds the brew from which on the kettle boils harder, before and behind", () => {
    const before = [2.3, 2.4, 2.35, 2.4, 2.3, 2.35];
    const behind = [2.75, 2.8, 2.7, 2.75, 2.8, 2.75];
    const [first] = driftTest({ equipment: typical, brews: course(...before, ...behind) });
    expect(first).toMatchObject({ name: "kettle.boilOff", after: 6 });
    expect(first?.before).toBeCloseTo(before.reduce((sum, each) => sum + each, 0) / 6, 9);
    expect(first?.behind).toBeCloseTo(behind.reduce((sum, each) => sum + each, 0) / 6, 9);
    expect(first?.pOfAny).toBeLessThan(0.01);
  });

  it("sees nothing in a steady kettle, and asks for three brews", () => {
    const [first] = driftTest({ equipment: typical, brews: course(2.3, 2.45, 2.35, 2.4, 2.5) });
    expect(first?.p).toBeGreaterThan(0.2);
    expect(driftTest({ equipment: typical, brews: course(2.3, 3.5) })).toEqual([]);
  });
});
