import { ROW_LISTS, type Column, type Draft, type Row, type RowList } from "./draft";

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

/** How each row is spoken of, by list and key. */
export type RowNames = ReadonlyMap<string, string>;

/**
 * A row is called by its ingredient, or by its place where it has no name; by both where two rows have one name, so that
 * no two controls of the page are called the same: "Saaz, hop 2".
 */
export function rowNames({ rows }: Pick<Draft, "rows">): RowNames {
  const counts = new Map<string, number>();
  for (const list of ROW_LISTS) {
    for (const row of rows[list]) counts.set(plainName(row), (counts.get(plainName(row)) ?? 0) + 1);
  }
  const names = new Map<string, string>();
  for (const list of ROW_LISTS) {
    rows[list].forEach((row, index) => {
      const place = `${NOUNS[list]} ${index + 1}`;
      const own = row.cells.name?.text.trim() ?? "";
      const isShared = (counts.get(plainName(row)) ?? 0) > 1;
      names.set(`${list}.${row.key}`, own === "" ? place : isShared ? `${own}, ${place}` : own);
    });
  }
  return names;
}

const plainName = ({ cells }: Row): string => (cells.name?.text.trim() ?? "").toLowerCase();

/** The accessible name of a cell: "Mass of Pale ale malt". */
export function cellLabel(rowName: string, column: Column): string {
  return `${COLUMN_LABELS[column]} of ${rowName}`;
}
