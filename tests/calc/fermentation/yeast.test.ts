import { describe, expect, it } from "vitest";
import {
  cellsInPack,
  heatOfFermentation,
  starterGrowth,
  type CountedCells,
  type StarterMethod,
  type YeastForm,
} from "@/lib/calc/fermentation";
import { billionCells, celsius, days, grams, kilograms } from "@/lib/calc/units";
import { expectWithin } from "../../support/expect-within";

const pack = (form: YeastForm, age: number, storedC: number): CountedCells =>
  cellsInPack({ cells: billionCells(100), ageDays: days(age), form, celsius: celsius(storedC) });

describe("cellsInPack", () => {
  it("loses 20 to 25 % of liquid yeast in a month in the fridge (common practice, no source)", () => {
    const month = pack("liquid", 30, 4);
    expectWithin(month.expected, 77.5, 1e-9);
    expectWithin(month.low, 75, 1e-9);
    expectWithin(month.high, 80, 1e-9);
  });

  it("loses as much again of what is left every month: 0.775³ after three (by hand)", () => {
    expectWithin(pack("liquid", 90, 4).expected, 46.548, 0.001);
  });

  it("loses 4 % of dry yeast in a cold year and twice as fast for each 8 K (common practice, no source)", () => {
    const year = pack("dry", 365, 4);
    expectWithin(year.expected, 96, 1e-9);
    expectWithin(year.low, 94, 1e-9);
    expectWithin(year.high, 98, 1e-9);
    expectWithin(pack("dry", 365, 12).expected, 96 * 0.96, 1e-9);
    expectWithin(pack("dry", 365, 20).expected, 100 * 0.96 ** 4, 1e-9);
  });

  it("is the count on the pack when fresh, and does not mind the shelf of the fridge", () => {
    expect(pack("liquid", 0, 4)).toEqual({ expected: 100, low: 100, high: 100 });
    expect(pack("liquid", 60, 0)).toEqual(pack("liquid", 60, 8));
  });

  it("refuses liquid yeast that stood warm, dry yeast in a hot shed, and a relic", () => {
    expect(() => pack("liquid", 30, 8.1)).toThrow("storage temperature 8.1 °C is outside 0 to 8 °C");
    expect(() => pack("dry", 30, 25.1)).toThrow("storage temperature 25.1 °C is outside 0 to 25 °C");
    expect(() => pack("dry", 1501, 4)).toThrow("age 1501 d is outside 0 to 1500 d");
    expect(() => cellsInPack({ cells: -1, ageDays: 1, form: "dry", celsius: 4 } as never)).toThrow("cells -1 10⁹");
  });
});

describe("starterGrowth", () => {
  const starter = (cells: number, extract: number, method: StarterMethod): ReturnType<typeof starterGrowth> =>
    starterGrowth({ cells: billionCells(cells), extractG: grams(extract), method });

  it("grows 1.4 thousand million cells on a gram when stirred and 0.5 when still (common practice, no source)", () => {
    expect(starter(80, 100, "stirred")).toEqual({
      ok: true,
      grown: { expected: 140, low: 105, high: 175 },
      total: { expected: 220, low: 185, high: 255 },
    });
    expect(starter(80, 100, "still")).toEqual({
      ok: true,
      grown: { expected: 50, low: 40, high: 60 },
      total: { expected: 130, low: 120, high: 140 },
    });
  });

  it("has no rate for a starter crowded with cells, and says what extract it takes: 200 / 1.4 (by hand)", () => {
    expect(starter(140, 100, "stirred").ok).toBe(true);
    const crowded = starter(200, 100, "stirred");
    expect(crowded).toMatchObject({ ok: false, reason: "crowded" });
    expectWithin(crowded.ok ? NaN : crowded.extractNeededG, 142.857, 0.001);
  });

  it("refuses a starter of water", () => {
    expect(() => starter(1, 0.9, "still")).toThrow("extract 0.9 g is outside 1 to 1000000 g");
    expect(() => starterGrowth({ cells: NaN, extractG: 100, method: "still" } as never)).toThrow("cells NaN 10⁹");
  });
});

describe("heatOfFermentation", () => {
  const heat = (extract: number): number => heatOfFermentation(kilograms(extract));

  it("is 587 kJ for a kilogram of extract (Narziß and Back, from memory): 140 kcal of 4.1868 kJ", () => {
    expect(heat(1)).toBe(587);
    expectWithin(heat(1), 140 * 4.1868, 1);
  });

  it("is 252 BTU for a pound of it (common practice, no source)", () => {
    expectWithin((heat(0.45359237) * 1000) / 1055.056, 252, 0.5);
  });

  it("is what the enthalpies of formation leave of maltose within 1 % (docs/worked-examples.md#heat-of-fermentation)", () => {
    expectWithin(heat(1) / 590, 1, 0.01);
  });

  it("is in proportion to the extract", () => {
    expect(heat(0)).toBe(0);
    expectWithin(heat(3), 3 * 587, 1e-9);
  });

  it("refuses a negative extract", () => {
    expect(() => heatOfFermentation(-1 as never)).toThrow("fermented extract -1 kg is outside 0 to 100000 kg");
  });
});
