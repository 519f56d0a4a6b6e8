import type { Recipe } from "@/lib/calc/ledger";
import { SALTS } from "@/lib/calc/water";
import type { MeasuredField } from "@/lib/model/field";
import type { Preferences } from "@/lib/model/preferences";
import { FERMENTABLE_FIELDS, HOP_FIELDS, SALT_FIELDS } from "@/lib/model/recipe-fields";
import { fieldText, fieldUnit } from "../read-field";
import { acidName } from "./acid-names";
import { changeRow } from "./change-rows";
import { NUMBER_FIELDS, ROW_LISTS, saltName, type Column, type Draft, type DraftField } from "./draft";
import { EMPTY, stored, word, type Entry } from "./entry";
import type { RowNames } from "./row-labels";
import type { RowKeys } from "./read-rows";

/** One amount that a target changes. */
export interface TargetChange {
  readonly label: string;
  readonly before: string;
  readonly after: string;
  readonly apply: (draft: Draft) => Draft;
}

interface Solved {
  readonly before: Recipe;
  readonly after: Recipe;
  readonly keys: RowKeys;
  readonly names: RowNames;
  readonly preferences: Preferences;
  /** The target in words, which stands beside each amount from then on. */
  readonly solvedFor: string;
}

/** Every amount in which the solved recipe differs, as it is now and as it would be. */
export function targetChanges(a: Solved): readonly TargetChange[] {
  const { before, after, keys } = a;
  return [
    ...after.fermentables.flatMap((row, i) =>
      rowChange(a, keys.fermentables[i] ?? "", "kg", FERMENTABLE_FIELDS.kg, before.fermentables[i]?.kg ?? 0, row.kg),
    ),
    ...after.hops.flatMap((row, i) =>
      rowChange(a, keys.hops[i] ?? "", "grams", HOP_FIELDS.grams, before.hops[i]?.grams ?? 0, row.grams),
    ),
    ...SALTS.flatMap((salt) =>
      fieldChange(a, saltName(salt), SALT_FIELDS[salt], before.water.salts[salt] ?? 0, after.water.salts[salt] ?? 0),
    ),
    ...acidChanges(a),
  ];
}

function rowChange(
  a: Solved,
  key: string,
  column: Column,
  field: MeasuredField,
  before: number,
  after: number,
): readonly TargetChange[] {
  const list = ROW_LISTS.find((each) => key.startsWith(`${each}.`));
  if (list === undefined || isSame(before, after)) return [];
  const row = key.slice(list.length + 1);
  const entry = solved(a, field, after);
  return [
    {
      label: `Mass of ${a.names.get(key) ?? ""}`,
      ...shown(a, field, before, after),
      apply: (draft) => changeRow(draft, list, row, { [column]: entry }),
    },
  ];
}

function fieldChange(
  a: Solved,
  name: DraftField,
  field: MeasuredField,
  before: number,
  after: number,
): readonly TargetChange[] {
  if (isSame(before, after)) return [];
  const entry = after === 0 ? EMPTY : solved(a, field, after);
  return [{ label: field.label, ...shown(a, field, before, after), apply: (draft) => withField(draft, name, entry) }];
}

function acidChanges(a: Solved): readonly TargetChange[] {
  const { acid } = a.after.water;
  if (acid === null) return [];
  const before = a.before.water.acid;
  const name = word(acidName(acid.solution) ?? "");
  const field = NUMBER_FIELDS["water.acidMl"];
  const isSameAcid = acidName(before?.solution ?? null) === name.text;
  const changes = fieldChange(a, "water.acidMl", field, isSameAcid ? (before?.ml ?? 0) : 0, acid.ml);
  return changes.map((change) => ({
    ...change,
    apply: (draft) => withField(change.apply(draft), "water.acid", name),
  }));
}

function withField(draft: Draft, name: DraftField, entry: Entry): Draft {
  return { ...draft, fields: { ...draft.fields, [name]: entry } };
}

function solved({ preferences, solvedFor }: Solved, field: MeasuredField, value: number): Entry {
  return { ...stored({ field, value, preferences }), solvedFor };
}

function shown({ preferences }: Solved, field: MeasuredField, before: number, after: number) {
  const text = (value: number): string => `${fieldText(field, value, preferences)} ${fieldUnit(field, preferences)}`;
  return { before: text(before), after: text(after) };
}

const isSame = (one: number, other: number): boolean => Math.abs(one - other) <= 1e-9 * Math.max(one, other);
