export type CsvCell = string | number | null;

interface CsvOptions {
  /** Spreadsheets on some systems read UTF-8 only after a byte order mark. */
  readonly byteOrderMark: boolean;
}

const BYTE_ORDER_MARK = "\uFEFF";
// What a spreadsheet takes for a formula: the signs themselves, and the white space it strips before it looks.
const FORMULA_START = /^[=+\-@\t\r]/;
const NUMBER = /^[+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d+)?$/;
const NEEDS_QUOTES = /[",\r\n]/;

/**
 * A table as RFC 4180 text: fields parted by commas, records ended by CRLF, quotes doubled. A cell that a spreadsheet would
 * run as a formula gets a leading apostrophe, unless it is a number.
 */
export function csvText(rows: readonly (readonly CsvCell[])[], options?: CsvOptions): string {
  const text = rows.map((row) => `${row.map(csvField).join(",")}\r\n`).join("");
  return options?.byteOrderMark === true ? BYTE_ORDER_MARK + text : text;
}

function csvField(cell: CsvCell): string {
  const harmless = withoutFormula(cell === null ? "" : String(cell));
  return NEEDS_QUOTES.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless;
}

function withoutFormula(text: string): string {
  return FORMULA_START.test(text) && !NUMBER.test(text) ? `'${text}` : text;
}
