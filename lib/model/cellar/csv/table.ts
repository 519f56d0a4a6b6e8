/** The most that is taken of one file; a probe that reads every ten minutes fills it in four months. */
export const CSV_LIMITS = { bytes: 5 * 1024 * 1024, rows: 20_000, columns: 40 } as const;

/** A line of the file, with its number as an editor counts it. */
export interface CsvLine {
  readonly line: number;
  readonly cells: readonly string[];
}

export type CsvTable =
  | { readonly ok: true; readonly header: readonly string[]; readonly lines: readonly CsvLine[] }
  | { readonly ok: false; readonly message: string };

const SEPARATORS = [",", ";", "\t"] as const;

/**
 * Reads a table of RFC 4180 with a heading, parted by commas, semicolons or tabs. It stops at the first line too many, so
 * that a file of a million lines costs no more than one of twenty thousand.
 */
export function readCsvTable(text: string): CsvTable {
  const body = text.startsWith("\uFEFF") ? text.slice(1) : text;
  const separator = separatorOf(body);
  const lines: CsvLine[] = [];
  for (const each of linesOf(body, separator)) {
    if (each === null) return refused("The file ends inside of a quotation: a closing quotation mark is missing.");
    if (each.cells.every((cell) => cell === "")) continue;
    if (each.cells.length > CSV_LIMITS.columns) {
      return refused(`Line ${String(each.line)} has more than ${String(CSV_LIMITS.columns)} columns.`);
    }
    if (lines.length > CSV_LIMITS.rows) {
      const most = CSV_LIMITS.rows.toLocaleString("en-GB");
      return refused(`The file has more than ${most} lines, which is the most of one file. Nothing was taken of it.`);
    }
    lines.push(each);
  }
  const [first, ...rest] = lines;
  if (first === undefined) return refused("The file is empty.");
  if (rest.length === 0) return refused("The file has a heading and no line below it.");
  return { ok: true, header: first.cells, lines: rest };
}

function refused(message: string): CsvTable {
  return { ok: false, message };
}

/** What occurs most in the heading. */
function separatorOf(text: string): string {
  const end = text.search(/[\r\n]/);
  const heading = end === -1 ? text : text.slice(0, end);
  const counts = SEPARATORS.map((separator) => heading.split(separator).length);
  return SEPARATORS[counts.indexOf(Math.max(...counts))] ?? ",";
}

/** Line by line; null where a quotation is never closed. */
function* linesOf(text: string, separator: string): Generator<CsvLine | null> {
  const end = new RegExp(`[${separator}\\r\\n]`, "g");
  let [line, startedAt, at] = [1, 1, 0];
  let cells: string[] = [];
  while (at <= text.length) {
    const quotation = text.charAt(at) === '"' ? quotationAt(text, at) : { text: "", end: at };
    if (quotation === null) {
      yield null;
      return;
    }
    end.lastIndex = quotation.end;
    const stop = end.exec(text)?.index ?? text.length;
    cells.push((quotation.text + text.slice(quotation.end, stop)).trim());
    line += breaksIn(quotation.text);
    const isSeparator = text.charAt(stop) === separator;
    at = stop + (text.startsWith("\r\n", stop) ? 2 : 1);
    if (isSeparator) continue;
    yield { line: startedAt, cells };
    cells = [];
    line += 1;
    startedAt = line;
  }
}

/** The text of a cell in quotation marks, and where it ends; null where it does not. */
function quotationAt(text: string, from: number): { readonly text: string; readonly end: number } | null {
  let at = from + 1;
  for (;;) {
    const mark = text.indexOf('"', at);
    if (mark === -1) return null;
    if (text.charAt(mark + 1) !== '"') {
      return { text: text.slice(from + 1, mark).replaceAll('""', '"'), end: mark + 1 };
    }
    at = mark + 2;
  }
}

function breaksIn(text: string): number {
  return text === "" ? 0 : text.split(/\r\n|\r|\n/).length - 1;
}
