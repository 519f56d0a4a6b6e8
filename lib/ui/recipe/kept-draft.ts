import type { MeasuredField } from "@/lib/model/field";
import type { Preferences } from "@/lib/model/preferences";
import type { KeptDraft } from "@/lib/model/recipe-draft";
import { displayUnit } from "../display-unit";
import { isWordField, measuredFieldOf, ROW_LISTS, rowField, type Column, type Draft, type DraftField } from "./draft";
import type { Row, RowList } from "./draft";
import { readEntry, stored, type Entry } from "./entry";
import { COLUMN_LABELS } from "./row-labels";

/** A draft with all that is needed to open it again, by whoever reads in other units by then. */
export function keptDraftOf(a: {
  readonly draft: Draft;
  readonly kettle: string;
  readonly note: string;
  readonly writer: string;
  readonly preferences: Preferences;
}): KeptDraft {
  const { draft, kettle, note, writer, preferences } = a;
  const rows = (list: RowList): KeptDraft["rows"][RowList] =>
    draft.rows[list].map(({ key, cells }) => ({ key, cells: { ...cells } }));
  return {
    fields: { ...draft.fields },
    rows: {
      steps: rows("steps"),
      mashGrist: rows("mashGrist"),
      kettleGrist: rows("kettleGrist"),
      boilHops: rows("boilHops"),
      standHops: rows("standHops"),
      dryHops: rows("dryHops"),
    },
    kettle,
    note,
    writer,
    preferences,
  };
}

/** Opens a kept draft. Fields that it does not know, because they are newer than it, come from `base`. */
export function draftFromKept(kept: KeptDraft, base: Draft, preferences: Preferences): Draft {
  const units = { from: kept.preferences, to: preferences };
  const names = Object.keys(base.fields) as DraftField[]; // the keys of the type are the keys of the object
  const fields = names.map((name) => {
    const entry = kept.fields[name];
    if (entry === undefined) return [name, base.fields[name]] as const;
    return [name, isWordField(name) ? entry : inUnits(entry, measuredFieldOf(name), units)] as const;
  });
  const rows = ROW_LISTS.map((list) => [list, kept.rows[list].map((row) => rowFromKept(row, list, units))] as const);
  // Both lists are complete, which fromEntries cannot know.
  return { fields: Object.fromEntries(fields), rows: Object.fromEntries(rows) } as unknown as Draft;
}

interface Units {
  readonly from: Preferences;
  readonly to: Preferences;
}

function rowFromKept({ key, cells }: KeptDraft["rows"][RowList][number], list: RowList, units: Units): Row {
  const known = Object.entries(cells).filter(([column]) => Object.hasOwn(COLUMN_LABELS, column));
  const entries = known.map(([column, entry]) => {
    const field = rowField(list, column as Column);
    return [column, field === null ? entry : inUnits(entry, field, units)] as const;
  });
  return { key, cells: Object.fromEntries(entries) };
}

/** "10" typed as kilograms is not 10 lb: a text whose meaning has changed since is written anew. */
function inUnits(entry: Entry, field: MeasuredField, { from, to }: Units): Entry {
  const { dimension } = field;
  if (dimension === null || displayUnit(dimension, from).unit === displayUnit(dimension, to).unit) return entry;
  const read = readEntry(entry, { field, preferences: from });
  if (!read.ok) return entry;
  const again = readEntry({ ...entry, exact: null }, { field, preferences: to });
  const meansTheSame = again.ok && Math.abs(again.value - read.value) <= 1e-9 * Math.abs(read.value);
  return meansTheSame ? entry : stored({ field, value: read.value, preferences: to });
}
