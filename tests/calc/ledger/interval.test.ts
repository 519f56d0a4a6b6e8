import { describe, expect, it } from "vitest";
import {
  brewWithWater,
  intervals,
  sampledIntervals,
  type Equipment,
  type Figure,
  type QuantityId,
} from "@/lib/calc/ledger";
import { kilograms } from "@/lib/calc/units";
import { brewed, brewInput, exactly, valueOf } from "../../support/brewed";
import { garageKettle, paleAle } from "../../support/brewing-fixtures";

/** Repeatable normal deviates (Box–Muller over a linear congruential generator). */
function normalDeviates(seed: number): () => number {
  let state = seed;
  const uniform = (): number => {
    state = (state * 1664525 + 1013904223) % 4294967296;
    return (state + 0.5) / 4294967296;
  };
  return () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
}

const WATCHED: readonly QuantityId[] = [
  "kettle.preBoilGravity",
  "kettle.heatingTime",
  "fermenter.volume",
  "fermenter.originalExtract",
  "lauter.efficiency",
  "stand.chillTime",
];

function sampledKettle(normal: () => number): Equipment {
  const move = <Q extends number>(figure: Figure<Q>, most = Infinity): Figure<Q> => ({
    ...figure,
    value: Math.min(most, Math.max(0, figure.value + figure.sd * normal())) as Q,
  });
  const { kettle, lauter, chiller, fermenter } = garageKettle;
  return {
    ...garageKettle,
    kettle: {
      ...kettle,
      heatShare: move(kettle.heatShare, 1),
      lossCoefficient: move(kettle.lossCoefficient),
      boilOff: move(kettle.boilOff),
      trub: move(kettle.trub),
      transfer: move(kettle.transfer),
    },
    lauter: {
      ...lauter,
      absorption: move(lauter.absorption),
      bypass: move(lauter.bypass, 1),
      conversion: move(lauter.conversion, 1),
    },
    hopAbsorption: move(garageKettle.hopAbsorption),
    chiller: { ...chiller, conductance: move(chiller.conductance) },
    fermenter: { ...fermenter, left: move(fermenter.left) },
  };
}

describe("intervals", () => {
  it("hold about 80 % of brews on kettles drawn from the stated uncertainties (second method: sampling)", () => {
    // Sugar only in the fermentable rows keeps the raw materials exact, so that only the kettle's figures are sampled.
    const recipe = {
      ...paleAle,
      fermentables: paleAle.fermentables.map((row) => ({ ...row, kind: "sugar" as const })),
    };
    const input = brewInput({ recipe });
    const found = intervals(input);
    const planned = brewed({ recipe });
    const normal = normalDeviates(20261125);
    // Poured to 0.3 L, as a measuring stick tells.
    const poured = (id: "water.mash" | "water.sparge") => kilograms((valueOf(planned, id) + 0.3 * normal()) * 0.998204);
    const inside = new Map<QuantityId, number>();
    const draws = 1500;
    for (let i = 0; i < draws; i++) {
      const outcome = brewWithWater({
        ...input,
        mashWaterKg: poured("water.mash"),
        spargeKg: poured("water.sparge"),
        equipment: sampledKettle(normal),
      });
      if (!outcome.ok) throw new Error(outcome.reason);
      for (const id of WATCHED) {
        const value = outcome.ledger.quantities[id];
        const interval = found[id];
        if (value === null || interval === undefined) throw new Error(`${id} has no interval`);
        if (value >= interval.low80 && value <= interval.high80) inside.set(id, (inside.get(id) ?? 0) + 1);
      }
    }
    for (const id of WATCHED) {
      const share = (inside.get(id) ?? 0) / draws;
      // Binomial sd at 1500 draws is 1 %; curvature of the ledger may take a little more.
      expect(share, id).toBeGreaterThan(0.76);
      expect(share, id).toBeLessThan(0.84);
    }
  });

  it("are wider for a kettle that is less well known", () => {
    const width = (sd: number): number => {
      const found = intervals(brewInput({ kettle: { boilOff: { ...garageKettle.kettle.boilOff, sd } } }))[
        "fermenter.originalExtract"
      ];
      return found === undefined ? 0 : found.high80 - found.low80;
    };
    expect(width(1)).toBeGreaterThan(width(0.3));
    expect(width(0.3)).toBeGreaterThan(width(0));
  });

  it("lie around the value and leave out what is weighed or set", () => {
    const found = intervals(brewInput());
    const ledger = brewed();
    for (const [id, interval] of Object.entries(found)) {
      const value = valueOf(ledger, id as QuantityId);
      expect(interval.low80, id).toBeLessThan(value);
      expect(interval.high80, id).toBeGreaterThan(value);
    }
    expect(found["water.mash"]).toBeUndefined();
    expect(found["mash.grist"]).toBeUndefined();
  });

  it("shrink to nothing but the raw materials when every figure is exact", () => {
    const exact = brewInput({ kettle: { boilOff: exactly(garageKettle.kettle.boilOff.value) } });
    expect(intervals(exact)["kettle.evaporated"]).toBeUndefined();
  });

  describe("of figures that were learned together", () => {
    const certain = <Q extends number>(figure: Figure<Q>): Figure<Q> => ({ ...figure, sd: 0 });
    const { kettle, lauter, chiller, fermenter } = garageKettle;
    const loss = (trubSd: number, transferSd: number, coefficient = 0): number => {
      const input = brewInput({
        kettle: {
          heatShare: certain(kettle.heatShare),
          lossCoefficient: certain(kettle.lossCoefficient),
          boilOff: certain(kettle.boilOff),
          trub: { ...kettle.trub, sd: trubSd },
          transfer: { ...kettle.transfer, sd: transferSd },
        },
        lauter: {
          absorption: certain(lauter.absorption),
          bypass: certain(lauter.bypass),
          conversion: certain(lauter.conversion),
        },
        equipment: {
          hopAbsorption: certain(garageKettle.hopAbsorption),
          chiller: { ...chiller, conductance: certain(chiller.conductance) },
          fermenter: { ...fermenter, left: certain(fermenter.left) },
        },
      });
      const correlations = [{ one: "kettle.trub", other: "kettle.transfer", coefficient }] as const;
      const found = intervals({ ...input, correlations })["stand.lost"];
      return found === undefined ? 0 : (found.high80 - found.low80) / 2;
    };

    // Trub and hoses add up: the variance of a sum is a² + b² + 2 r a b (JCGM 100:2008, 5.2.2).
    it.each([
      { coefficient: 0, expected: 0.5 },
      { coefficient: 1, expected: 0.7 },
      { coefficient: -1, expected: 0.1 },
      { coefficient: 0.5, expected: Math.sqrt(0.37) },
    ])("with $coefficient add up to $expected L of one standard uncertainty", ({ coefficient, expected }) => {
      expect(loss(0.4, 0.3, coefficient)).toBeCloseTo(1.2815515655 * expected, 8);
    });

    it("refuse a coefficient beyond one", () => {
      expect(() => loss(0.4, 0.3, 1.01)).toThrow("correlation coefficient 1.01 is outside -1 to 1");
      expect(() => loss(0.4, 0.3, Number.NaN)).toThrow("correlation coefficient NaN is outside -1 to 1");
    });
  });
});

describe("sampled intervals", () => {
  const drawn = sampledIntervals({ ...brewInput(), draws: 1500, seed: 7 });
  const linear = intervals(brewInput());

  it("are where the law of propagation puts them, to a fifth of their width (second method)", () => {
    expect(Object.keys(drawn).sort()).toEqual(Object.keys(linear).sort());
    for (const [id, interval] of Object.entries(linear)) {
      const other = drawn[id as QuantityId];
      if (other === undefined) throw new Error(`${id} was not sampled`);
      const width = interval.high80 - interval.low80;
      expect(Math.abs(other.low80 - interval.low80), id).toBeLessThan(0.2 * width);
      expect(Math.abs(other.high80 - interval.high80), id).toBeLessThan(0.2 * width);
    }
  });

  it("are the same for the same seed, and nearly so for another", () => {
    const again = sampledIntervals({ ...brewInput(), draws: 1500, seed: 7 });
    expect(again).toEqual(drawn);
    const other = sampledIntervals({ ...brewInput(), draws: 1500, seed: 8 })["fermenter.originalExtract"];
    expect(other?.low80).not.toBe(drawn["fermenter.originalExtract"]?.low80);
    expect(other?.low80).toBeCloseTo(drawn["fermenter.originalExtract"]?.low80 ?? 0, 1);
  });

  it("follow two losses that are off together: 0.4 + 0.3 L against the root of the sum of squares, 0.5 L", () => {
    const width = (coefficient: number): number => {
      const input = brewInput({
        kettle: {
          trub: { ...garageKettle.kettle.trub, sd: 0.4 },
          transfer: { ...garageKettle.kettle.transfer, sd: 0.3 },
        },
        equipment: { hopAbsorption: { ...garageKettle.hopAbsorption, sd: 0 } },
      });
      const correlations = [{ one: "kettle.trub", other: "kettle.transfer", coefficient }] as const;
      const found = sampledIntervals({ ...input, correlations, draws: 4000, seed: 1 })["stand.lost"];
      return found === undefined ? 0 : (found.high80 - found.low80) / 2 / 1.2815515655;
    };
    expect(width(0)).toBeCloseTo(0.5, 1);
    expect(width(1)).toBeCloseTo(0.7, 1);
  });

  it("are not there for coefficients that contradict each other", () => {
    const together = { coefficient: 0.9 } as const;
    const correlations = [
      { one: "kettle.trub", other: "kettle.transfer", ...together },
      { one: "kettle.transfer", other: "kettle.boilOff", ...together },
      { one: "kettle.trub", other: "kettle.boilOff", coefficient: -0.9 },
    ] as const;
    expect(sampledIntervals({ ...brewInput(), correlations, draws: 100, seed: 1 })).toEqual({});
  });

  it.each([99, 100.5, 10_001, Number.NaN])("refuse %s draws", (draws) => {
    expect(() => sampledIntervals({ ...brewInput(), draws, seed: 1 })).toThrow("is outside 100 to 10000 draws");
  });

  it("are empty where nothing can be brewed", () => {
    const recipe = { ...paleAle, fermentables: [] };
    expect(sampledIntervals({ ...brewInput({ recipe }), draws: 100, seed: 1 })).toEqual({});
    expect(intervals(brewInput({ recipe }))).toEqual({});
  });
});
