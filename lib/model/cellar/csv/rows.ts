import { OutOfRangeError } from "@/lib/calc/errors";
import { loggedLabel } from "../../log/log-event-input";
import { loggedRange, type SeriesId } from "../../log/series";
import { columnUnit, type CsvChoices } from "./columns";
import { instantIn } from "./instant";
import type { CsvLine } from "./table";

/** One reading of a line, in the unit of the log. */
export interface CsvReading {
  readonly quantity: SeriesId;
  readonly value: number;
  readonly sd: number;
  /** As it stands in the file, with its unit. */
  readonly entered: string;
}

/** A line as it would be taken, or why it cannot be. */
export type CsvRow =
  | { readonly ok: true; readonly line: number; readonly at: Date; readonly readings: readonly CsvReading[] }
  | { readonly ok: false; readonly line: number; readonly message: string };

/** A probe whose clock is a little ahead is not wrong; one that is a day ahead is. */
const AHEAD_MS = 24 * 3_600_000;
const EARLIEST = Date.parse("2000-01-01T00:00:00Z");

/** Reads every line by the choices; `now` is what a time must not lie behind. */
export function readCsvRows(lines: readonly CsvLine[], choices: CsvChoices, now: Date): readonly CsvRow[] {
  return lines.map((line) => readRow(line, choices, now));
}

function readRow({ line, cells }: CsvLine, choices: CsvChoices, now: Date): CsvRow {
  const wrong = (message: string): CsvRow => ({ ok: false, line, message });
  const written = cells[choices.time] ?? "";
  const at = instantIn(written, choices.zone);
  if (at === null) return wrong(`Time “${written.slice(0, 40)}” is not a day with a time, such as 2026-12-04 18:30`);
  if (at.getTime() < EARLIEST) return wrong(`Time “${written}” is before the year 2000`);
  if (at.getTime() > now.getTime() + AHEAD_MS) return wrong(`Time “${written}” lies in the future`);
  const readings: CsvReading[] = [];
  for (const { column, unit } of choices.values) {
    const read = readCell(cells[column] ?? "", unit);
    if (typeof read === "string") return wrong(read);
    if (read !== null) readings.push(read);
  }
  return readings.length === 0 ? wrong("No column that was chosen holds a number") : { ok: true, line, at, readings };
}

const NUMBER = /^[-+−]?(?:\d+[.,]?\d*|[.,]\d+)$/;

/** The reading of a cell, null for an empty one, or what is wrong with it. */
function readCell(text: string, unitId: CsvChoices["values"][number]["unit"]): CsvReading | null | string {
  if (text === "") return null;
  const { text: name, quantity, sd, toLibrary } = columnUnit(unitId);
  const shown = `“${text.slice(0, 40)}”`;
  if (!NUMBER.test(text)) return `${name} ${shown} is not a number`;
  try {
    const value = toLibrary(Number(text.replace("−", "-").replace(",", ".")));
    const { min, max, unit } = loggedRange(quantity);
    if (value >= min && value <= max) return { quantity, value, sd, entered: `${text} (${name})`.slice(0, 80) };
    return `${name} ${shown} is outside ${String(min)} to ${String(max)} ${unit}, what ${loggedLabel(quantity)} can be`;
  } catch (error) {
    if (error instanceof OutOfRangeError) return `${name} ${shown}: ${error.message}`;
    throw error;
  }
}
