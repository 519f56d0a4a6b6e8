import { changeRow, insertRow, removeRow } from "./change-rows";
import { ROW_LISTS, type Draft, type DraftField, type Row, type RowList } from "./draft";
import { rowNoun } from "./row-labels";
import { fieldLabel } from "./words-of-action";

/** One field or row in which two drafts differ. */
export interface DraftDifference {
  readonly id: string;
  readonly label: string;
  readonly theirs: string;
  readonly yours: string;
  /** Puts theirs into a draft in place of one's own. */
  readonly take: (draft: Draft, makeKey: () => string) => Draft;
}

/** Field by field, what somebody else saved and what stands in one's own draft; both opened by the same person. */
export function draftDifferences(theirs: Draft, yours: Draft): readonly DraftDifference[] {
  const names = Object.keys(yours.fields) as DraftField[]; // the keys of the type are the keys of the object
  const fields = names
    .filter((name) => theirs.fields[name].text.trim() !== yours.fields[name].text.trim())
    .map((name) => ({
      id: name,
      label: fieldLabel(name),
      theirs: theirs.fields[name].text,
      yours: yours.fields[name].text,
      take: (draft: Draft) => ({ ...draft, fields: { ...draft.fields, [name]: theirs.fields[name] } }),
    }));
  return [...fields, ...ROW_LISTS.flatMap((list) => rowDifferences(list, theirs.rows[list], yours.rows[list]))];
}

/** Rows that only one side has; a row with a changed amount is on both sides, once each, and such a pair is one difference. */
function rowDifferences(list: RowList, theirs: readonly Row[], yours: readonly Row[]): DraftDifference[] {
  const onlyTheirs = without(theirs, yours);
  const onlyYours = without(yours, theirs);
  const pairs = paired(onlyTheirs, onlyYours);
  return pairs.map(({ their, your }) => ({
    id: `${list}.${their?.key ?? ""}.${your?.key ?? ""}`,
    label: `A ${rowNoun(list)}`,
    theirs: their === null ? "" : rowText(their),
    yours: your === null ? "" : rowText(your),
    take: (draft, makeKey) => {
      if (their === null) return your === null ? draft : removeRow(draft, list, your.key);
      if (your !== null) return changeRow(draft, list, your.key, their.cells);
      return insertRow(draft, list, { key: makeKey(), cells: their.cells }, theirs.indexOf(their));
    },
  }));
}

interface Pair {
  readonly their: Row | null;
  readonly your: Row | null;
}

/** Rows of one name belong together; those of steps, which have none, by their order. */
function paired(onlyTheirs: readonly Row[], onlyYours: readonly Row[]): readonly Pair[] {
  const left = [...onlyYours];
  const pairs = onlyTheirs.map((their): Pair => {
    const at = left.findIndex(({ cells }) => cells.name?.text.trim() === their.cells.name?.text.trim());
    return { their, your: at === -1 ? null : (left.splice(at, 1)[0] ?? null) };
  });
  return [...pairs, ...left.map((your): Pair => ({ their: null, your }))];
}

/** The rows of one side that the other has not, each row of the other standing for one. */
function without(rows: readonly Row[], others: readonly Row[]): readonly Row[] {
  const left = others.map(rowText);
  return rows.filter((row) => {
    const at = left.indexOf(rowText(row));
    if (at !== -1) left.splice(at, 1);
    return at === -1;
  });
}

function rowText({ cells }: Row): string {
  return [cells.name, cells.celsius, cells.kg, cells.grams, cells.minutes, cells.extract, cells.colour, cells.alpha]
    .map((entry) => entry?.text.trim() ?? "")
    .filter(Boolean)
    .join(", ");
}
