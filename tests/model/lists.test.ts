import { describe, expect, it } from "vitest";
import { grams, kilograms, minutes } from "@/lib/calc/units";
import { HOP_VARIETIES } from "@/lib/model/hop-varieties";
import { TYPICAL_FERMENTABLES } from "@/lib/model/ingredients";
import { fermentableRow, hopRow } from "@/lib/model/recipe-rows";
import { STYLES, type StyleFigures } from "@/lib/model/styles";
import { YEAST_CLASSES } from "@/lib/model/yeast-classes";

const repeated = (names: readonly string[]): readonly string[] => names.filter((name, i) => names.indexOf(name) !== i);

const spansOf = (figures: StyleFigures) => [
  figures.originalGravity,
  figures.finalGravity,
  figures.bitterness,
  figures.colour,
  figures.alcohol,
];

describe("styles", () => {
  it("have a code each", () => {
    expect(repeated(STYLES.map(({ code }) => code))).toEqual([]);
  });

  it("go from low to high", () => {
    const spans = STYLES.flatMap(({ figures }) => (figures === null ? [] : spansOf(figures)));
    expect(spans.filter(({ low, high }) => low > high)).toEqual([]);
  });

  // BJCP 2021 Style Guidelines, as printed.
  it.each([
    ["5D", 1.044, 1.05, 22, 40, 2, 4],
    ["18B", 1.045, 1.06, 30, 50, 5, 10],
    ["20C", 1.075, 1.115, 50, 90, 30, 40],
  ])("%s has the figures of the guidelines", (code, ogLow, ogHigh, ibuLow, ibuHigh, srmLow, srmHigh) => {
    expect(STYLES.find((style) => style.code === code)?.figures).toMatchObject({
      originalGravity: { low: ogLow, high: ogHigh },
      bitterness: { low: ibuLow, high: ibuHigh },
      colour: { low: srmLow, high: srmHigh },
    });
  });
});

describe("ingredients", () => {
  it("have a name each", () => {
    const names = [...TYPICAL_FERMENTABLES, ...HOP_VARIETIES, ...YEAST_CLASSES].map(({ name }) => name);
    expect(repeated(names)).toEqual([]);
  });

  it("are rows that a recipe takes", () => {
    for (const entry of TYPICAL_FERMENTABLES) {
      const row = { ...entry, kg: kilograms(1) };
      expect(fermentableRow.parse(row)).toEqual(row);
    }
    for (const { name, alphaHigh } of HOP_VARIETIES) {
      const row = { name, alpha: alphaHigh, grams: grams(20), use: "boil", minutes: minutes(60) } as const;
      expect(hopRow.parse(row)).toEqual(row);
    }
  });

  it("have the crystal water of dextrose monohydrate", () => {
    // 18.015 / 198.17 g/mol, IUPAC standard atomic weights.
    const dextrose = TYPICAL_FERMENTABLES.find(({ name }) => name === "Dextrose monohydrate");
    expect(dextrose?.moisture).toBeCloseTo(18.015 / 198.17, 3);
  });
});
