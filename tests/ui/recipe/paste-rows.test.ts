import { describe, expect, it } from "vitest";
import type { Preferences } from "@/lib/model/preferences";
import type { RowList } from "@/lib/ui/recipe/draft";
import { readPasted, type PastedLine } from "@/lib/ui/recipe/paste-rows";

const METRIC: Preferences = { units: "metric", gravity: "plato", colour: "ebc", theme: "auto" };

const read = (text: string, list: RowList = "mashGrist") =>
  readPasted(text, { list, preferences: METRIC, reference: null });
const texts = ({ cells }: PastedLine): Record<string, string> =>
  Object.fromEntries(Object.entries(cells ?? {}).map(([column, entry]) => [column, entry.text]));

describe("readPasted", () => {
  it("reads a table with headings in any order, their units, and decimal commas", () => {
    const { lines, unused } = read("Colour (EBC)\tSupplier\tMalt\tMass, lb\n6,5\tMill Lane\tPale ale malt\t9,5\n");
    expect(lines).toHaveLength(1);
    expect(lines.map(texts)).toMatchObject([{ name: "Pale ale malt", kg: "9,5 lb", colour: "6,5 EBC" }]);
    expect(lines[0]?.number).toBe(2);
    expect(unused).toEqual(["Supplier"]);
  });

  it("finds the columns of a table without headings by their units and their order", () => {
    const { lines } = read("Saaz\t25 g\t60 min\t3.5 %\nSaaz\t20 g\t5 min\t3.5 %", "boilHops");
    expect(lines.map(texts)).toEqual([
      { name: "Saaz", grams: "25 g", minutes: "60 min", alpha: "3.5 %" },
      { name: "Saaz", grams: "20 g", minutes: "5 min", alpha: "3.5 %" },
    ]);
  });

  it("takes bare numbers in the order of the screen", () => {
    const { lines } = read("Saaz;25;3,5;60", "boilHops");
    expect(lines.map(texts)).toEqual([{ name: "Saaz", grams: "25", alpha: "3,5", minutes: "60" }]);
    expect(lines[0]?.problems).toEqual([]);
  });

  it("reads quoted cells of a file with commas", () => {
    const { lines } = read('name,mass\n"Malt, pale","4,5 kg"');
    expect(lines.map(texts)).toMatchObject([{ name: "Malt, pale", kg: "4,5 kg" }]);
  });

  it("says line by line what was not understood, and takes the rest", () => {
    const { lines } = read("Name\tMass\nPale ale malt\tplenty\n\t3 kg\nWheat malt\t1 kg");
    expect(lines[0]?.problems[0]).toBe("Mass “plenty” is not a number in kg");
    expect(lines[0]?.cells?.name?.text).toBe("Pale ale malt");
    expect(lines[1]).toMatchObject({ number: 3, cells: null });
    expect(lines[1]?.problems[0]).toBe("There is no name in this line");
    expect(texts(lines[2] ?? { number: 0, cells: null, understood: "", problems: [] }).kg).toBe("1 kg");
  });

  it("says which figures are missing that no list knows", () => {
    const [line] = read("Name\tMass\nHouse malt\t1 kg").lines;
    expect(line?.problems).toEqual(["Extract yield is missing", "Moisture is missing", "Colour is missing"]);
  });

  it("reads mash steps, which have no names", () => {
    const { lines } = read("52 °C\t10\n66 °C\t60", "steps");
    expect(lines.map(texts)).toEqual([
      { celsius: "52 °C", minutes: "10" },
      { celsius: "66 °C", minutes: "60" },
    ]);
  });
});
