import { CsvError, type CsvRecord } from "./csv-records";

export const CSV_COLUMNS = ["id", "brew", "at", "quantity", "value", "unit", "sd", "instrument", "note"] as const;
type Column = (typeof CSV_COLUMNS)[number];
const NEEDED: readonly Column[] = ["at", "quantity", "value", "unit"];
const NUMBERS: readonly Column[] = ["value", "sd"];

const DECIMAL = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d{1,3})?$/i;

/** The columns in the order of the first line of a table. */
export function readHeading({ line, cells }: CsvRecord): readonly Column[] {
  const columns = cells.map((cell) => {
    const column = CSV_COLUMNS.find((name) => name === cell.trim().toLowerCase());
    if (column !== undefined) return column;
    throw new CsvError(
      `line ${String(line)}: “${cell.trim().slice(0, 40)}” is no column; they are ${CSV_COLUMNS.join(", ")}`,
    );
  });
  const twice = columns.find((column, index) => columns.indexOf(column) !== index);
  if (twice !== undefined) throw new CsvError(`line ${String(line)}: the column ${twice} is there twice`);
  const missing = NEEDED.filter((column) => !columns.includes(column));
  if (missing.length === 0) return columns;
  throw new CsvError(`line ${String(line)}: the first line names the columns, and has no ${missing.join(", ")}`);
}

/** A line as a reading of JSON would be: an empty cell is a field that is not there. */
export function readLine(columns: readonly Column[], { line, cells }: CsvRecord): Readonly<Record<string, unknown>> {
  if (cells.length > columns.length) {
    throw new CsvError(
      `line ${String(line)}: there are ${String(cells.length)} cells for ${String(columns.length)} columns`,
    );
  }
  return Object.fromEntries(
    columns.flatMap((column, index): readonly (readonly [string, unknown])[] => {
      const text = (cells[index] ?? "").trim();
      if (text === "") return [];
      return [[column, NUMBERS.includes(column) && DECIMAL.test(text) ? Number(text) : text]];
    }),
  );
}
