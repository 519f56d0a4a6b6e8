import type { Preferences } from "@/lib/model/preferences";
import { readField } from "../read-field";
import { BLANK, insertRow } from "./change-rows";
import { rowField, type Column, type Draft, type RowList } from "./draft";
import { typed, word, type Entry } from "./entry";
import { fillFromName } from "./fill-from-name";
import { guessedColumns, headingsOf, withUnit, type PastedColumn } from "./paste-columns";
import { COLUMN_LABELS } from "./row-labels";
import { ROW_LAYOUTS } from "./row-layout";
import { splitTable } from "./split-table";
import type { Reference } from "./use-reference";

/** One line of a pasted table, and what was made of it. */
export interface PastedLine {
  /** Counted from 1, headings included. */
  readonly number: number;
  /** What will stand in the row, by column; null where the line makes no row. */
  readonly cells: Readonly<Partial<Record<Column, Entry>>> | null;
  readonly understood: string;
  /** What was not understood, or is missing. */
  readonly problems: readonly string[];
}

export interface Pasted {
  readonly lines: readonly PastedLine[];
  /** Columns that no row of this list has. */
  readonly unused: readonly string[];
}

interface Setting {
  readonly list: RowList;
  readonly preferences: Preferences;
  readonly reference: Reference | null;
}

const MOST_ROWS = 40;

/** Reads rows that were copied from a spreadsheet, with headings or without. Nothing is put in yet. */
export function readPasted(text: string, setting: Setting): Pasted {
  const table = splitTable(text);
  const headings = table[0] === undefined ? null : headingsOf(setting.list, table[0]);
  const rows = headings === null ? table : table.slice(1);
  const columns = headings ?? guessedColumns(setting.list, rows, setting.preferences);
  const first = headings === null ? 1 : 2;
  return {
    lines: rows.slice(0, MOST_ROWS).map((row, index) => readLine(row, first + index, columns, setting)),
    unused: columns.filter(({ column }) => column === null).map(({ heading }) => heading),
  };
}

function readLine(
  row: readonly string[],
  number: number,
  columns: readonly PastedColumn[],
  setting: Setting,
): PastedLine {
  const { list } = setting;
  const given: Partial<Record<Column, Entry>> = {};
  const problems: string[] = [];
  const understood: string[] = [];
  columns.forEach(({ column, unit }, index) => {
    const text = row[index] ?? "";
    if (column === null || text === "") return;
    const read = readCell(text, column, unit, setting);
    if (!read.ok) return problems.push(read.message);
    given[column] = read.entry;
    return understood.push(`${COLUMN_LABELS[column]} ${read.entry.text}`);
  });
  const isNameless = ROW_LAYOUTS[list].columns.includes("name") && given.name === undefined;
  if (isNameless || Object.keys(given).length === 0) {
    return {
      number,
      cells: null,
      understood: row.join(" | "),
      problems: ["There is no name in this line", ...problems],
    };
  }
  const known = given.name === undefined ? null : listed(given.name.text, setting);
  const cells = { ...BLANK[list], ...known, ...given };
  const missing = ROW_LAYOUTS[list].columns.filter(
    (column) => cells[column]?.text === "" && column !== "fermentability",
  );
  const lacks = missing.map((column) => `${COLUMN_LABELS[column]} is missing`);
  return { number, cells, understood: understood.join(", "), problems: [...problems, ...lacks] };
}

function listed(name: string, { list, reference, preferences }: Setting): ReturnType<typeof fillFromName> {
  return reference === null ? null : fillFromName({ list, name, reference, preferences });
}

type ReadCell = { readonly ok: true; readonly entry: Entry } | { readonly ok: false; readonly message: string };

function readCell(text: string, column: Column, unit: string, { list, preferences }: Setting): ReadCell {
  const field = rowField(list, column);
  if (field === null) return { ok: true, entry: word(column === "kind" ? text.toLowerCase() : text.slice(0, 80)) };
  const written = withUnit(text, unit, field.dimension);
  const read = readField({ field, text: written, label: COLUMN_LABELS[column], preferences });
  return read.ok ? { ok: true, entry: typed(written) } : { ok: false, message: read.message };
}

/** Puts the rows at the end of their list, as one step. */
export function withPasted(draft: Draft, list: RowList, lines: readonly PastedLine[], makeKey: () => string): Draft {
  return lines.reduce(
    (into, { cells }) =>
      cells === null ? into : insertRow(into, list, { key: makeKey(), cells }, into.rows[list].length),
    draft,
  );
}
