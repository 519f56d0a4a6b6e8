import type { Draft, DraftField, Row, RowList } from "./draft";
import { ROW_LISTS } from "./draft";
import { rowNoun } from "./row-labels";
import { fieldLabel } from "./words-of-action";

/** One field in which two drafts differ. */
export interface DraftDifference {
  readonly label: string;
  readonly theirs: string;
  readonly yours: string;
}

/** Field by field, what somebody else saved and what stands in one's own draft; both opened by the same person. */
export function draftDifferences(theirs: Draft, yours: Draft): readonly DraftDifference[] {
  const names = Object.keys(yours.fields) as DraftField[]; // the keys of the type are the keys of the object
  const fields = names
    .filter((name) => theirs.fields[name].text.trim() !== yours.fields[name].text.trim())
    .map((name) => ({ label: fieldLabel(name), theirs: theirs.fields[name].text, yours: yours.fields[name].text }));
  return [...fields, ...ROW_LISTS.flatMap((list) => rowDifferences(list, theirs.rows[list], yours.rows[list]))];
}

/** Rows that only one side has; a row with a changed amount is on both sides, once each. */
function rowDifferences(list: RowList, theirs: readonly Row[], yours: readonly Row[]): DraftDifference[] {
  const theirTexts = theirs.map(rowText);
  const yourTexts = yours.map(rowText);
  const onlyTheirs = theirTexts.filter((text) => !yourTexts.includes(text));
  const onlyYours = yourTexts.filter((text) => !theirTexts.includes(text));
  return Array.from({ length: Math.max(onlyTheirs.length, onlyYours.length) }, (_, i) => ({
    label: `A ${rowNoun(list)}`,
    theirs: onlyTheirs[i] ?? "",
    yours: onlyYours[i] ?? "",
  }));
}

function rowText({ cells }: Row): string {
  return [cells.name, cells.celsius, cells.kg, cells.grams, cells.minutes, cells.extract, cells.colour, cells.alpha]
    .map((entry) => entry?.text.trim() ?? "")
    .filter(Boolean)
    .join(", ");
}
