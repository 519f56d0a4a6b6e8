import { QUANTITIES, type Dimension, type Equipment, type QuantityId } from "@/lib/calc/ledger";
import { equipmentInput } from "@/lib/model/equipment";
import type { Preferences } from "@/lib/model/preferences";
import { readEquipment } from "../equipment/read-equipment";
import { fieldText, readField } from "../read-field";
import { compute } from "./compute";
import { readEntry, typed } from "./entry";
import { readDraft } from "./read-draft";
import { rowResults } from "./row-results";
import { WHAT_IF_GROUPS, whatIfInputs, type Setting, type WhatIfInput } from "./what-if-inputs";

/** What a trial is about. */
export interface Trial {
  readonly preferences: Preferences;
  /** The number that is explained: a quantity of the ledger, or a row by list and key. */
  readonly explained: string;
}

/** The number of a trial; or why there is none, in words that name field and range where a field is to blame. */
export type Tried = { readonly ok: true; readonly value: number } | { readonly ok: false; readonly why: string };

/** More of one group than this a reader does not try out. */
const MOST_SHOWN = 6;
const NUDGE = 1.02;

/** The explained number in a setting. Nothing of it is saved, and neither the recipe nor the kettle changes. */
export function tried(setting: Setting, { preferences, explained }: Trial): Tried {
  const { written, problems } = readDraft(setting.draft, preferences);
  if (written === null) return { ok: false, why: first(problems) };
  const kettle = readKettle(setting, preferences);
  if (!kettle.ok) return kettle;
  const computed = compute(written.recipe, kettle.equipment, written.ambient);
  if (!computed.ok) return computed;
  const { ledger } = computed.brewed;
  const value = isQuantity(explained)
    ? ledger.quantities[explained]
    : (rowResults(ledger, written.keys).get(explained) ?? null);
  return value === null ? { ok: false, why: "This has no such number" } : { ok: true, value };
}

type KettleRead = { readonly ok: true; readonly equipment: Equipment } | { readonly ok: false; readonly why: string };

/** A kettle is tried as it would be saved: figure by figure, and then all of them together. */
function readKettle({ kettle }: Setting, preferences: Preferences): KettleRead {
  const { equipment, problems } = readEquipment(kettle, preferences);
  if (equipment === null) return { ok: false, why: first(problems) };
  const checked = equipmentInput.safeParse(equipment);
  if (checked.success) return { ok: true, equipment };
  return { ok: false, why: checked.error.issues[0]?.message ?? "This is no kettle" };
}

function first(problems: Readonly<Record<string, string>>): string {
  return Object.values(problems)[0] ?? "A field cannot be read";
}

/** What kind of number is explained. */
export function explainedDimension(explained: string): Dimension {
  if (isQuantity(explained)) return QUANTITIES[explained].dimension;
  return explained.includes("Hops.") ? "bitterness" : "fraction";
}

function isQuantity(id: string): id is QuantityId {
  return Object.hasOwn(QUANTITIES, id);
}

/** Of recipe, day and kettle the inputs that move a number most, each tried a little larger. */
export function mostInfluential(setting: Setting, trial: Trial): readonly WhatIfInput[] {
  const now = tried(setting, trial);
  if (!now.ok) return [];
  const moves = whatIfInputs(setting).map((input) => ({ input, move: moveOf(input, setting, trial, now.value) }));
  const most = moves.filter(({ move }) => move > 1e-9 * Math.abs(now.value)).sort((a, b) => b.move - a.move);
  return WHAT_IF_GROUPS.flatMap((group) =>
    most
      .map(({ input }) => input)
      .filter((input) => input.group === group)
      .slice(0, MOST_SHOWN),
  );
}

function moveOf(input: WhatIfInput, setting: Setting, trial: Trial, now: number): number {
  const { preferences } = trial;
  const value = valueOf(input, input.entry.text, preferences);
  if (value === null || value === 0) return 0;
  const larger = Math.min(input.field.max, value * NUDGE);
  const near = larger > value ? larger : value / NUDGE;
  const then = tried(input.put(setting, exactText(input, near, preferences)), trial);
  return then.ok ? Math.abs(then.value - now) : 0;
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

/** A setting with everything in it that somebody has typed, by the id of the input. */
export function withTexts(
  setting: Setting,
  inputs: readonly WhatIfInput[],
  texts: Readonly<Record<string, string>>,
): Setting {
  return inputs.reduce((into, input) => {
    const text = Object.hasOwn(texts, input.id) ? texts[input.id] : undefined;
    return text === undefined ? into : input.put(into, text);
  }, setting);
}
