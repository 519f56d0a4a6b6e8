import { describe, expect, it } from "vitest";
import { wortDensity } from "@/lib/calc/gravity";
import { runOff, type Sparge } from "@/lib/calc/lauter";
import { celsius, degreesPlato, fraction, kilograms, litres } from "@/lib/calc/units";
import { expectWithin } from "../../support/expect-within";

interface Case {
  readonly water: number;
  readonly grist: number;
  readonly extractAsIs: number;
  readonly absorption: number;
  readonly sparge: number;
  readonly method: Sparge;
  readonly bypass: number;
  readonly portions?: number;
}

const PLAIN: Case = { water: 25, grist: 5, extractAsIs: 0.8, absorption: 1, sparge: 0, method: "none", bypass: 0 };
const SPARGED = ["batch", "continuous", "pour-over"] as const;
const WATER_KG_PER_L = wortDensity({ plato: degreesPlato(0), celsius: celsius(20) });

function drain(changes: Partial<Case>): ReturnType<typeof runOff> {
  const { water, grist, extractAsIs, absorption, sparge, bypass, ...rest } = { ...PLAIN, ...changes };
  return runOff({
    ...rest,
    wort: kilograms(water + grist * extractAsIs),
    extract: kilograms(grist * extractAsIs),
    retained: litres(grist * absorption),
    sparge: kilograms(sparge),
    bypass: fraction(bypass),
  });
}

function drained(changes: Partial<Case>): ReturnType<typeof runOff> & { readonly ok: true } {
  const outcome = drain(changes);
  if (!outcome.ok) throw new Error(outcome.reason);
  return outcome;
}

const efficiency = (changes: Partial<Case>): number => drained(changes).efficiency;

/** Share of the first held extract that a wash leaves behind. */
const left = (changes: Partial<Case>): number => (1 - efficiency(changes)) / (1 - efficiency({}));

/** Worked from V = (W + E)/(SG · 0.9982) and perfect mixing, retained volume absorption × grist. */
const ROWS: readonly (Partial<Case> & { expected: number; tolerance: number })[] = [
  { water: 30, grist: 5, absorption: 1, extractAsIs: 0.8, expected: 0.8462, tolerance: 0.003 },
  { water: 25, grist: 6, absorption: 0.8, extractAsIs: 0.78, expected: 0.8282, tolerance: 0.003 },
  { water: 15, sparge: 15, grist: 5, method: "batch", expected: 0.9287, tolerance: 0.004 },
  { water: 18, sparge: 12, grist: 5, method: "batch", expected: 0.9284, tolerance: 0.004 },
];

describe("runOff", () => {
  it.each(ROWS)("gives the worked lauter efficiency $expected", ({ expected, tolerance, ...changes }) => {
    expectWithin(efficiency(changes), expected, tolerance);
  });

  it.each(["none", ...SPARGED] as const)("loses neither mass nor extract: %s", (method) => {
    const sparge = method === "none" ? 0 : 10;
    const found = drained({ sparge, method, bypass: 0.2 });
    expectWithin(found.kg + found.retainedKg, 25 + 4 + sparge, 1e-12);
    expectWithin(found.extractKg + found.retainedExtractKg, 4, 1e-12);
    expectWithin(found.efficiency, found.extractKg / 4, 1e-12);
  });

  it("keeps as many litres of weaker wort after washing as of first wort before", () => {
    for (const method of ["none", ...SPARGED] as const) {
      const { retainedKg, retainedExtractKg } = drained({ sparge: method === "none" ? 0 : 6, method });
      const plato = degreesPlato((100 * retainedExtractKg) / retainedKg);
      expectWithin(retainedKg / wortDensity({ plato, celsius: celsius(20) }), 5, 1e-4);
    }
  });

  it("keeps first wort unwashed: 5 L of 13.793 °P (4 kg in 29 kg), the rest runs off", () => {
    const { retainedKg, retainedExtractKg } = drained({});
    expectWithin(retainedExtractKg / retainedKg, 4 / 29, 1e-12);
    expectWithin(retainedKg, 5 * wortDensity({ plato: degreesPlato(400 / 29), celsius: celsius(20) }), 1e-12);
  });

  it("falls when more grain is put into the same water, while the extract still rises", () => {
    for (const method of SPARGED) {
      const fills = [2, 3, 4, 5, 6, 7, 8].map((grist) => drained({ grist, sparge: 8, method, bypass: 0.2 }));
      const efficiencies = fills.map((fill) => fill.efficiency);
      const extracts = fills.map((fill) => fill.extractKg);
      expect(efficiencies).toEqual([...efficiencies].sort((a, b) => b - a));
      expect(extracts).toEqual([...extracts].sort((a, b) => a - b));
    }
  });

  it("never gives less extract for more sparge", () => {
    for (const method of SPARGED) {
      const extracts = [0, 0.5, 1, 2, 4, 8, 16, 32, 64, 5000].map((sparge) => drained({ sparge, method }).extractKg);
      expect(extracts).toEqual([...extracts].sort((a, b) => a - b));
      expect(extracts.at(-1)).toBeLessThanOrEqual(4);
    }
  });

  it("washes nothing with water that all runs past the grain, and with no water", () => {
    for (const method of SPARGED) {
      expectWithin(efficiency({ sparge: 10, method, bypass: 1 }), efficiency({}), 1e-12);
      expectWithin(efficiency({ sparge: 0, method }), efficiency({}), 1e-12);
    }
  });

  it("counts bypass as that much less sparge for the extract, but not for the wort", () => {
    for (const method of SPARGED) {
      const all = drained({ sparge: 10, method, bypass: 0.4 });
      const washing = drained({ sparge: 6, method });
      expectWithin(all.extractKg, washing.extractKg, 1e-12);
      expectWithin(all.kg - washing.kg, 4, 1e-12);
    }
  });

  it("runs everything off grain that keeps nothing", () => {
    for (const method of SPARGED)
      expect(drained({ absorption: 0, sparge: 5, method })).toMatchObject({ efficiency: 1, retainedKg: 0, kg: 34 });
  });

  it("gives water back where nothing dissolved", () => {
    expect(drained({ extractAsIs: 0, sparge: 5, method: "continuous" })).toMatchObject({ extractKg: 0, efficiency: 1 });
  });
});

describe("the ways to sparge", () => {
  it("wash in the order none, batch, pour-over, continuous, with the same water and no bypass", () => {
    const found = [
      efficiency({}),
      efficiency({ sparge: 8, method: "batch" }),
      efficiency({ sparge: 8, method: "pour-over" }),
      efficiency({ sparge: 8, method: "continuous" }),
    ];
    expect(found).toEqual([...new Set(found)].sort((a, b) => a - b));
  });

  it("mix one batch perfectly: 5 L of first wort of 1.0541 kg/L in 10 kg of water leave 0.242 kg (by hand)", () => {
    // 13.793 °P is SG 1.05596 by Lincoln, 5.270 kg in 5 L with 0.7270 kg of extract. With 10 kg of water that makes
    // 4.761 °P, SG 1.01871, of which 5 L weigh 5.0844 kg.
    const { retainedExtractKg, retainedKg } = drained({ sparge: 10, method: "batch" });
    expectWithin(retainedExtractKg, 0.24205, 0.0001);
    expectWithin(retainedKg, 5.0844, 0.001);
  });

  it("gain with every division of a batch, and tend to pouring over as there are ever more", () => {
    const divided = [1, 2, 4, 8, 1000].map((portions) => left({ sparge: 8, method: "batch", portions }));
    expect(divided).toEqual([...divided].sort((a, b) => b - a));
    // The parts change the density of what is held a little; the closed form has water's.
    expectWithin(divided.at(-1) ?? NaN, left({ sparge: 8, method: "pour-over" }), 0.01);
  });

  it("pour over as a stirred volume is washed out: e^(−S/V)", () => {
    expectWithin(left({ sparge: 8, method: "pour-over" }), Math.exp(-8 / (5 * WATER_KG_PER_L)), 1e-12);
  });

  it("run through a flooded bed as through three stirred layers (second method: one layer after another in time)", () => {
    const layers = [1, 1, 1];
    const steps = 60_000;
    const share = (3 * 8) / (5 * WATER_KG_PER_L) / steps;
    for (let i = 0; i < steps; i++) {
      let above = 0;
      for (let layer = 0; layer < 3; layer++) {
        const before = layers[layer] ?? NaN;
        layers[layer] = before + share * (above - before);
        above = before;
      }
    }
    const mean = layers.reduce((sum, layer) => sum + layer) / 3;
    expectWithin(left({ sparge: 8, method: "continuous" }), mean, 1e-4);
  });

  it("do no better than a sharp front would, which is clean when one volume has run through", () => {
    for (const sparge of [0.5, 1, 2, 3, 4.9]) {
      expect(left({ sparge, method: "continuous" })).toBeGreaterThan(1 - sparge / (5 * WATER_KG_PER_L));
    }
  });
});

describe("runOff refuses", () => {
  it("nothing, but says when the grain holds all the wort, and how much wort there was", () => {
    const outcome = drain({ water: 4, grist: 8, absorption: 1.4 });
    expect(outcome).toMatchObject({ ok: false, reason: "grain-holds-all-water" });
    // 4 kg of water and 6.4 kg of extract are stronger than any wort and are weighed at 35 °P: 1.1515 kg/L.
    if (!outcome.ok) expectWithin(outcome.wortLitres, 10.4 / 1.1515, 0.01);
    expect(drain({ water: 0, grist: 0 })).toMatchObject({ ok: false, wortLitres: 0 });
  });

  const ok = {
    wort: kilograms(29),
    extract: kilograms(4),
    retained: litres(5),
    sparge: kilograms(0),
    method: "none",
    bypass: fraction(0),
  } as const;
  const wrong = (changes: object): (() => unknown) => {
    return () => runOff({ ...ok, ...changes });
  };

  it.each([
    [{ wort: NaN }, "wort in the mash NaN kg is outside 0 to 100000 kg"],
    [{ wort: -1 }, "wort in the mash -1 kg is outside 0 to 100000 kg"],
    [{ extract: 29.1 }, "dissolved extract 29.1 kg is outside 0 to 29 kg"],
    [{ retained: -0.1 }, "wort kept by the grain -0.1 L is outside 0 to 100000 L"],
    [{ sparge: 1 }, "sparge water 1 kg is outside 0 to 0 kg"],
    [{ sparge: -1, method: "batch" }, "sparge water -1 kg is outside 0 to 100000 kg"],
    [{ bypass: 1.01 }, "bypass 1.01 is outside 0 to 1"],
    [{ method: "batch", portions: 0 }, "portions 0 is outside 1 to 1000"],
    [{ method: "batch", portions: 1001 }, "portions 1001 is outside 1 to 1000"],
    [{ method: "batch", portions: 2.5 }, "portions 2.5 is outside 1 to 1000"],
  ])("%j", (changes, message) => {
    expect(wrong(changes)).toThrow(message);
  });
});
