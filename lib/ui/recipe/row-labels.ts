import type { Column, Row, RowList } from "./draft";

/** The columns as headings and in the names of their cells. */
export const COLUMN_LABELS: Readonly<Record<Column, string>> = {
  name: "Name",
  kind: "Kind",
  celsius: "Temperature",
  minutes: "Minutes",
  kg: "Mass",
  extract: "Extract yield",
  moisture: "Moisture",
  colour: "Colour",
  fermentability: "Fermentability",
  distilledWaterPh: "Distilled-water pH",
  buffering: "Buffering",
  lacticFraction: "Lactic acid",
  grams: "Mass",
  alpha: "Alpha acids",
};

const NOUNS: Readonly<Record<RowList, string>> = {
  steps: "mash step",
  mashGrist: "fermentable",
  kettleGrist: "kettle sugar",
  boilHops: "hop",
  standHops: "stand hop",
  dryHops: "dry hop",
};

/** What a list's rows are called: "mash step". */
export function rowNoun(list: RowList): string {
  return NOUNS[list];
}

/** A row as it is spoken of: its ingredient, or its place where it has no name. */
export function rowName(list: RowList, row: Row, index: number): string {
  const name = row.cells.name?.text.trim() ?? "";
  return name === "" ? `${NOUNS[list]} ${index + 1}` : name;
}

/** The accessible name of a cell: "Mass of Pale ale malt". */
export function cellLabel(list: RowList, row: Row, index: number, column: Column): string {
  return `${COLUMN_LABELS[column]} of ${rowName(list, row, index)}`;
}
