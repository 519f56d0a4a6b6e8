import { QUANTITIES, type Dimension, type Equipment, type QuantityId } from "@/lib/calc/ledger";
import type { MeasuredField } from "@/lib/model/field";
import type { Preferences } from "@/lib/model/preferences";
import { fieldText, readField } from "../read-field";
import { typeInRow } from "./change-rows";
import { compute } from "./compute";
import {
  isWordField,
  measuredFieldOf,
  ROW_FIELDS,
  ROW_LISTS,
  rowField,
  type Column,
  type Draft,
  type DraftField,
} from "./draft";
import { readEntry, typed, type Entry } from "./entry";
import { readDraft } from "./read-draft";
import { cellLabel, rowNames } from "./row-labels";
import { rowResults } from "./row-results";

/** One number of the recipe that somebody may try another value of. */
export interface WhatIfInput {
  readonly id: string;
  readonly label: string;
  readonly field: MeasuredField;
  readonly entry: Entry;
  /** A copy of the draft with this text in its place. */
  readonly put: (draft: Draft, text: string) => Draft;
}

/** Where a trial is computed. */
export interface Trial {
  readonly equipment: Equipment;
  readonly preferences: Preferences;
  /** The number that is explained: a quantity of the ledger, or a row by list and key. */
  readonly explained: string;
}

/** More than this a reader does not try out. */
const MOST_SHOWN = 6;
const NUDGE = 1.02;

/** Every number of a draft that has a value. */
export function whatIfInputs(draft: Draft): readonly WhatIfInput[] {
  const names = Object.keys(draft.fields) as DraftField[]; // the keys of the type are the keys of the object
  const single = names.flatMap((name): WhatIfInput[] => {
    if (isWordField(name)) return [];
    const field = measuredFieldOf(name);
    const put = (into: Draft, text: string): Draft => ({ ...into, fields: { ...into.fields, [name]: typed(text) } });
    return [{ id: name, label: field.label, field, entry: draft.fields[name], put }];
  });
  return [...single, ...cellInputs(draft)].filter(({ entry }) => entry.text.trim() !== "");
}

function cellInputs(draft: Draft): readonly WhatIfInput[] {
  const called = rowNames(draft);
  return ROW_LISTS.flatMap((list) =>
    draft.rows[list].flatMap(({ key, cells }) =>
      (Object.keys(ROW_FIELDS[list]) as Column[]).flatMap((column): WhatIfInput[] => {
        const [field, entry] = [rowField(list, column), cells[column]];
        if (field === null || entry === undefined) return [];
        const label = cellLabel(called.get(`${list}.${key}`) ?? "", column);
        const put = (into: Draft, text: string): Draft => typeInRow(into, list, key, { [column]: text });
        return [{ id: `${list}.${key}.${column}`, label, field, entry, put }];
      }),
    ),
  );
}

/** The explained number of a draft; null where it has none. */
export function tried(draft: Draft, { equipment, preferences, explained }: Trial): number | null {
  const { written } = readDraft(draft, preferences);
  if (written === null) return null;
  const computed = compute(written.recipe, equipment, written.ambient);
  if (!computed.ok) return null;
  const { ledger } = computed.brewed;
  return isQuantity(explained)
    ? ledger.quantities[explained]
    : (rowResults(ledger, written.keys).get(explained) ?? null);
}

/** What kind of number is explained. */
export function explainedDimension(explained: string): Dimension {
  if (isQuantity(explained)) return QUANTITIES[explained].dimension;
  return explained.includes("Hops.") ? "bitterness" : "fraction";
}

function isQuantity(id: string): id is QuantityId {
  return Object.hasOwn(QUANTITIES, id);
}

/** The inputs that move a number most, each tried a little larger. */
export function mostInfluential(draft: Draft, trial: Trial): readonly WhatIfInput[] {
  const now = tried(draft, trial);
  if (now === null) return [];
  const moves = whatIfInputs(draft).flatMap((input) => {
    const value = valueOf(input, input.entry.text, trial.preferences);
    if (value === null || value === 0) return [];
    const larger = Math.min(input.field.max, value * NUDGE);
    const near = larger > value ? larger : value / NUDGE;
    const then = tried(input.put(draft, exactText(input, near, trial.preferences)), trial);
    const move = then === null ? 0 : Math.abs(then - now);
    return move > 1e-9 * Math.abs(now) ? [{ input, move }] : [];
  });
  return moves
    .sort((one, other) => other.move - one.move)
    .slice(0, MOST_SHOWN)
    .map(({ input }) => input);
}

/** A text fine enough for a nudge to be seen in it. */
function exactText({ field }: WhatIfInput, value: number, preferences: Preferences): string {
  const text = fieldText(field, value, preferences);
  const read = readField({ field, text, preferences });
  return read.ok ? text : fieldText(field, Math.min(field.max, Math.max(field.min, value)), preferences);
}

function valueOf({ field, entry }: WhatIfInput, text: string, preferences: Preferences): number | null {
  const read = readEntry(text === entry.text ? entry : typed(text), { field, preferences });
  return read.ok ? read.value : null;
}

/** How far one press goes, in the library's unit; what is not named goes by a twentieth of its value. */
const STEPS: Readonly<Partial<Record<Dimension, number>>> = { temperature: 1, minutes: 5, fraction: 0.01, ph: 0.05 };

/** The text after one press of − or +; null at the end of the range. */
export function stepped(input: WhatIfInput, text: string, by: -1 | 1, preferences: Preferences): string | null {
  const { field } = input;
  const value = valueOf(input, text, preferences);
  if (value === null) return null;
  const step = (field.dimension === null ? undefined : STEPS[field.dimension]) ?? Math.abs(value) / 20;
  const next = value + by * step;
  return step === 0 || next < field.min || next > field.max ? null : fieldText(field, next, preferences);
}
