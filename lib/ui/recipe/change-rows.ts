import type { Column, Draft, Row, RowList } from "./draft";
import { EMPTY, typed, word, type Entry } from "./entry";

type Cells = Readonly<Partial<Record<Column, Entry>>>;

/** What a new row begins with. */
export const BLANK: Readonly<Record<RowList, Cells>> = {
  steps: { celsius: EMPTY, minutes: EMPTY },
  mashGrist: { name: EMPTY, kind: word("malt"), kg: EMPTY, extract: EMPTY, moisture: EMPTY, colour: EMPTY },
  kettleGrist: { name: EMPTY, kind: word("sugar"), kg: EMPTY, extract: EMPTY, moisture: EMPTY, colour: EMPTY },
  boilHops: { name: EMPTY, grams: EMPTY, alpha: EMPTY, minutes: EMPTY },
  standHops: { name: EMPTY, grams: EMPTY, alpha: EMPTY, minutes: EMPTY },
  // A dry hop gives no bitterness, so nobody needs to know its alpha acids.
  dryHops: { name: EMPTY, grams: EMPTY, alpha: word("0") },
};

const WORDS: ReadonlySet<Column> = new Set<Column>(["name", "kind"]);

function withRows(draft: Draft, list: RowList, rows: readonly Row[]): Draft {
  return { ...draft, rows: { ...draft.rows, [list]: rows } };
}

export function typeInRow(
  draft: Draft,
  list: RowList,
  key: string,
  cells: Readonly<Partial<Record<Column, string>>>,
): Draft {
  return changeRow(draft, list, key, asEntries(cells));
}

function asEntries(cells: Readonly<Partial<Record<Column, string>>>): Cells {
  const columns = Object.keys(cells) as Column[]; // the keys of the type are the keys of the object
  return Object.fromEntries(
    columns.map((column) => {
      const text = cells[column] ?? "";
      return [column, WORDS.has(column) ? word(text) : typed(text)];
    }),
  );
}

/** Puts entries into a row; what is not named stays. */
export function changeRow(draft: Draft, list: RowList, key: string, cells: Cells): Draft {
  const rows = draft.rows[list].map((row) => (row.key === key ? { ...row, cells: { ...row.cells, ...cells } } : row));
  return withRows(draft, list, rows);
}

/** Adds an empty row below another, or at the end. */
export function addRow(draft: Draft, list: RowList, key: string, below: string | null): Draft {
  return insertBelow(draft, list, { key, cells: BLANK[list] }, below);
}

export function duplicateRow(draft: Draft, list: RowList, key: string, of: string): Draft {
  const original = draft.rows[list].find((row) => row.key === of);
  return original === undefined ? draft : insertBelow(draft, list, { key, cells: original.cells }, of);
}

function insertBelow(draft: Draft, list: RowList, row: Row, below: string | null): Draft {
  const rows = draft.rows[list];
  const at = below === null ? -1 : rows.findIndex(({ key }) => key === below);
  return withRows(draft, list, at === -1 ? [...rows, row] : rows.toSpliced(at + 1, 0, row));
}

/** Puts a row at a place of its list, or at the end where the list is shorter. */
export function insertRow(draft: Draft, list: RowList, row: Row, at: number): Draft {
  return withRows(draft, list, draft.rows[list].toSpliced(at, 0, row));
}

export function removeRow(draft: Draft, list: RowList, key: string): Draft {
  return withRows(
    draft,
    list,
    draft.rows[list].filter((row) => row.key !== key),
  );
}

/** Moves a row one place up (−1) or down (1) in its list. */
export function moveRow(draft: Draft, list: RowList, key: string, by: -1 | 1): Draft {
  const rows = draft.rows[list];
  const from = rows.findIndex((row) => row.key === key);
  const row = rows[from];
  const to = from + by;
  if (row === undefined || to < 0 || to >= rows.length) return draft;
  return withRows(draft, list, rows.toSpliced(from, 1).toSpliced(to, 0, row));
}
