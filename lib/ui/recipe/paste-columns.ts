import type { Dimension } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { amountUnit } from "../amount-units";
import { readField } from "../read-field";
import { rowField, type Column, type RowList } from "./draft";
import { ROW_LAYOUTS } from "./row-layout";

/** What a column of a pasted table holds. */
export interface PastedColumn {
  /** null for what no row of this list has. */
  readonly column: Column | null;
  /** As the heading says, for cells that have none of their own. */
  readonly unit: string;
  readonly heading: string;
}

const HEADINGS: readonly (readonly [column: Column, words: RegExp])[] = [
  ["name", /^(name|ingredients?|malts?|fermentables?|grist|hops?|variety|varieties|sugar)$/],
  ["kind", /^(kind|type)$/],
  ["extract", /^(extract|yield|extract yield|potential)$/],
  ["moisture", /^(moisture|water)$/],
  ["colour", /^(colour|color|ebc|srm|lovibond|°l)$/],
  ["fermentability", /^(fermentability|ferments)$/],
  ["alpha", /^(alpha|alpha acids?|aa|α|α-acids?)$/],
  ["minutes", /^(minutes|min|time|boil|before end|stands|rests|duration)$/],
  ["celsius", /^(temperature|temp|celsius|°c|°f)$/],
  ["kg", /^(mass|amount|weight|quantity|kg|lb|g|oz)$/],
  ["grams", /^(mass|amount|weight|quantity|kg|lb|g|oz)$/],
];

/** Reads the first line as headings where it names one of the list's columns and holds no number; null otherwise. */
export function headingsOf(list: RowList, row: readonly string[]): readonly PastedColumn[] | null {
  const columns = row.map((heading) => headed(list, heading));
  const isHeading = columns.some(({ column }) => column !== null) && !row.some((cell) => /\d/.test(cell));
  return isHeading ? columns : null;
}

function headed(list: RowList, heading: string): PastedColumn {
  const [, words = "", unit = ""] = /^([^,([]*)(?:[,([]\s*([^)\]]*))?/.exec(heading) ?? [];
  const wanted = words.trim().toLowerCase();
  const takes = columnsOf(list);
  const column = HEADINGS.find(([each, known]) => takes.includes(each) && known.test(wanted))?.[0] ?? null;
  // "kg" alone is heading and unit at once.
  const own = column === null ? null : (rowField(list, column)?.dimension ?? null);
  const isUnit = own !== null && amountUnit(own, wanted) !== null;
  return { column, unit: unit.trim() !== "" ? unit.trim() : isUnit ? words.trim() : "", heading };
}

/** What each column holds where no heading says it: by the units of its cells, and otherwise in the order of the screen. */
export function guessedColumns(
  list: RowList,
  rows: readonly (readonly string[])[],
  preferences: Preferences,
): readonly PastedColumn[] {
  const width = Math.max(0, ...rows.map((row) => row.length));
  const left = [...columnsOf(list)];
  const take = (column: Column | undefined): Column | null => {
    const at = column === undefined ? -1 : left.indexOf(column);
    return at === -1 ? null : (left.splice(at, 1)[0] ?? null);
  };
  const cellsAt = (index: number): readonly string[] =>
    rows.map((row) => row[index] ?? "").filter((cell) => cell !== "");
  const guessed = Array.from({ length: width }, (_, index) => take(byUnit(list, cellsAt(index), left, preferences)));
  return guessed.map((column, index) => ({
    column: column ?? take(left.find((each) => isOfShape(list, each, cellsAt(index), preferences))),
    unit: "",
    heading: `column ${String(index + 1)}`,
  }));
}

/** The column whose unit the cells carry: "4.5 kg" is a mass, "60 min" a time. */
function byUnit(
  list: RowList,
  cells: readonly string[],
  left: readonly Column[],
  preferences: Preferences,
): Column | undefined {
  const hasUnit = cells.length > 0 && cells.every((cell) => /\d/.test(cell) && /[^\d\s.,/+−-]/.test(cell));
  return hasUnit ? left.find((column) => reads(list, column, cells, preferences)) : undefined;
}

function isOfShape(list: RowList, column: Column, cells: readonly string[], preferences: Preferences): boolean {
  const isNumber = cells.length > 0 && cells.every((cell) => /^[-+−]?[\d.,/\s]+$/.test(cell));
  if (column === "kind") return cells.every((cell) => KINDS.has(cell.toLowerCase()));
  return column === "name" ? !isNumber && cells.length > 0 : isNumber && reads(list, column, cells, preferences);
}

const KINDS: ReadonlySet<string> = new Set(["malt", "adjunct", "sugar", "malt extract"]);

function reads(list: RowList, column: Column, cells: readonly string[], preferences: Preferences): boolean {
  const field = rowField(list, column);
  return field !== null && cells.some((text) => readField({ field, text, preferences }).ok);
}

function columnsOf(list: RowList): readonly Column[] {
  return ROW_LAYOUTS[list].columns;
}

/** A cell with the unit of its heading, unless it has one of its own. */
export function withUnit(text: string, unit: string, dimension: Dimension | null): string {
  const isBare = /^[-+−]?[\d.,/\s]+$/.test(text);
  return isBare && unit !== "" && dimension !== null && amountUnit(dimension, unit) !== null ? `${text} ${unit}` : text;
}
