import type { Column, RowList } from "./draft";

/** How the rows of one list are laid out. */
export interface RowLayout {
  /** In the order of the screen; the last one adds a row on Enter. */
  readonly columns: readonly Column[];
  readonly heading: string;
  readonly addWords: string;
  /** The number that the ledger gives back for a row. */
  readonly result: "share" | "bitterness" | null;
  /** Columns of the grid on a wide screen, written out whole so that the style sheet finds them. */
  readonly grid: string;
}

export const ROW_LAYOUTS: Readonly<Record<RowList, RowLayout>> = {
  steps: {
    columns: ["celsius", "minutes"],
    heading: "Mash steps",
    addWords: "Add a mash step",
    result: null,
    grid: "md:grid-cols-[6.5rem_6.5rem_minmax(0,1fr)]",
  },
  mashGrist: {
    columns: ["name", "kind", "kg", "extract", "moisture", "colour"],
    heading: "Grist",
    addWords: "Add a fermentable",
    result: "share",
    grid: "md:grid-cols-[minmax(8rem,1fr)_5rem_4.75rem_4rem_4rem_4.5rem_3.75rem_var(--row-actions)]",
  },
  kettleGrist: {
    columns: ["name", "kind", "kg", "extract", "moisture", "colour", "fermentability"],
    heading: "Sugars and malt extracts",
    addWords: "Add a sugar or extract",
    result: "share",
    grid: "md:grid-cols-[minmax(7rem,1fr)_5.5rem_4.5rem_3.75rem_3.75rem_4rem_3.75rem_3.75rem_var(--row-actions)]",
  },
  boilHops: {
    columns: ["name", "grams", "alpha", "minutes"],
    heading: "Hops in the boil",
    addWords: "Add a hop to the boil",
    result: "bitterness",
    grid: "md:grid-cols-[minmax(8rem,1fr)_5rem_5rem_5.75rem_5rem_var(--row-actions)]",
  },
  standHops: {
    columns: ["name", "grams", "alpha", "minutes"],
    heading: "Hops in the stand",
    addWords: "Add a hop to the stand",
    result: "bitterness",
    grid: "md:grid-cols-[minmax(8rem,1fr)_5rem_5rem_5.75rem_5rem_var(--row-actions)]",
  },
  dryHops: {
    columns: ["name", "grams"],
    heading: "Dry hops",
    addWords: "Add a dry hop",
    result: null,
    grid: "md:grid-cols-[minmax(8rem,1fr)_5rem_var(--row-actions)]",
  },
};

/** Short headings of the columns; the accessible names of the cells say more. */
export const COLUMN_HEADINGS: Readonly<Record<Column, string>> = {
  name: "Name",
  kind: "Kind",
  celsius: "Temperature",
  minutes: "Minutes",
  kg: "Mass",
  extract: "Extract",
  moisture: "Moisture",
  colour: "Colour",
  fermentability: "Ferments",
  distilledWaterPh: "pH",
  buffering: "Buffering",
  lacticFraction: "Lactic",
  grams: "Mass",
  alpha: "Alpha",
};

/** The minutes of a hop say from where they are counted. */
export function columnHeading(list: RowList, column: Column): string {
  if (column !== "minutes") return COLUMN_HEADINGS[column];
  if (list === "boilHops") return "Before end";
  return list === "standHops" ? "Stands" : "Rests";
}
