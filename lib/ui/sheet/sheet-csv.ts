import { QUANTITIES, type Intervals, type Ledger, type Recipe } from "@/lib/calc/ledger";
import type { CsvCell } from "@/lib/model/csv";
import type { Preferences } from "@/lib/model/preferences";
import { displayUnit } from "../display-unit";
import { sheetFigures } from "./sheet-figures";
import { sheetRows, type SheetRow } from "./sheet-rows";

/** More digits than the screen, so that somebody can go on computing; fewer than would pretend to be exact. */
const SIGNIFICANT = 6;

const HEADINGS = ["Part", "What", "Where", "Value", "Unit", "80 % interval from", "80 % interval to", "Lot"] as const;

/** A recipe on one kettle as a table: what it is of, what goes in with its lots, and the numbers of the beer and the day. */
export interface SheetToTell {
  /** What the sheet is of, in words: recipe, kettle, way out. */
  readonly about: readonly (readonly [what: string, words: string])[];
  readonly recipe: Recipe;
  readonly ledger: Ledger;
  readonly intervals: Intervals;
  /** Label of the lot of a row, by the path of the row: "hops.2". */
  readonly lots: ReadonlyMap<string, string>;
}

export function sheetCsv(sheet: SheetToTell, preferences: Preferences): readonly (readonly CsvCell[])[] {
  const { about, recipe, ledger, intervals, lots } = sheet;
  const inUnit = (value: number | null, dimension: SheetRow["dimension"]): CsvCell => {
    if (value === null) return null;
    const shown = dimension === null ? value : displayUnit(dimension, preferences).fromLibrary(value);
    return Number(shown.toPrecision(SIGNIFICANT));
  };
  const unitOf = (dimension: SheetRow["dimension"]): string =>
    dimension === null ? "mL" : displayUnit(dimension, preferences).unit;
  const cells = ledger.quantities["fermenter.cells"];
  return [
    HEADINGS,
    ...about.map(([what, words]) => ["Sheet", what, words]),
    ...sheetRows(recipe, ledger).map(({ key, name, when, value, dimension }) => {
      const lot = lots.get(pathOf(key)) ?? null;
      return ["Goes in", name, when, inUnit(value, dimension), unitOf(dimension), null, null, lot];
    }),
    [
      ...["Goes in", recipe.yeast.name, "fermenter", inUnit(cells, "cells"), unitOf("cells")],
      ...[null, null, lots.get("yeast") ?? null],
    ],
    ...sheetFigures(preferences).map(({ id, label }) => {
      const { dimension } = QUANTITIES[id];
      const { low80 = null, high80 = null } = intervals[id] ?? {};
      const value = inUnit(ledger.quantities[id], dimension);
      return [
        "Number",
        label,
        null,
        value,
        unitOf(dimension),
        inUnit(low80, dimension),
        inUnit(high80, dimension),
        null,
      ];
    }),
  ];
}

/** The path of a row of the recipe, by the key of its line: "hop 2" is "hops.2", a salt is named by itself. */
function pathOf(key: string): string {
  const [list, index] = key.split(" ");
  if (key === "acid") return key;
  return list === "fermentable" || list === "hop" ? `${list}s.${index ?? ""}` : `salts.${key}`;
}
