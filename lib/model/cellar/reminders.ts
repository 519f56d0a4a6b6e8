import { OutOfRangeError } from "@/lib/calc/errors";
import { dayOfShare, fermentedShare, platoOnDay } from "@/lib/calc/fermentation";
import type { Recipe } from "@/lib/calc/ledger";
import { degreesPlato } from "@/lib/calc/units";
import type { BrewLog } from "../log/project-log";
import { DAY_MS } from "../plain-day";
import { headingFor, lastGravity, type Fermentation } from "./fermentation";

export const REMINDER_KINDS = ["dry hop", "diacetyl rest"] as const;
export type ReminderKind = (typeof REMINDER_KINDS)[number];

/** Share of the fall behind it when something is to be done. Common practice, no source. */
export const DUE_AT_SHARE: Readonly<Record<ReminderKind, number>> = { "dry hop": 0.9, "diacetyl rest": 0.75 };

/** Pitched no warmer than this, yeast wants warmth to take its diacetyl up again, °C. Common practice, no source. */
export const COOL_PITCH_C = 15;

/** The step under which the log keeps what was done about the rest. */
export const DIACETYL_STEP = "diacetyl-rest";

/** The rule behind each, as the page says it. */
export const REMINDER_RULES: Readonly<Record<ReminderKind, string>> = {
  "dry hop":
    "Dry hops go in when nine tenths of the fall are behind the beer: yeast still takes up the oxygen that comes with them, and little aroma is scrubbed out. Common practice, no source.",
  "diacetyl rest":
    "A beer pitched at 15 °C or cooler is let warm by some 3 to 5 K when three quarters of the fall are behind it, and kept so for two days or three: yeast takes its diacetyl up again. Common practice, no source.",
};

/** Something to be done in the cellar. */
export interface Reminder {
  readonly kind: ReminderKind;
  readonly state: "ahead" | "due" | "done" | "left out";
  /** When it is or was due, ms since 1970; null where the readings do not tell. */
  readonly at: number | null;
  /** What is to be added: name and grams of each. */
  readonly hops: readonly { readonly name: string; readonly grams: number }[];
}

interface Cellar {
  readonly recipe: Pick<Recipe, "hops" | "yeast">;
  readonly log: BrewLog;
  readonly fermentation: Fermentation;
  /** ms since 1970. */
  readonly now: number;
}

/** What a fermentation asks for, by the recipe, the readings and what was logged as done. */
export function remindersOf(cellar: Cellar): readonly Reminder[] {
  if (cellar.fermentation.pitchedAt === null) return [];
  return [...dryHops(cellar), ...diacetylRest(cellar)];
}

function dryHops(cellar: Cellar): readonly Reminder[] {
  const rows = cellar.recipe.hops.filter(({ use }) => use === "dry");
  if (rows.length === 0) return [];
  const added = cellar.log.additions.filter(({ content }) => content.at === "fermenter");
  const missing = rows.filter(({ name }) => !added.some(({ content }) => content.name === name));
  const hops = (missing.length === 0 ? rows : missing).map(({ name, grams }) => ({ name, grams }));
  const due = dueOf("dry hop", cellar);
  return [{ kind: "dry hop", ...due, state: missing.length === 0 ? "done" : due.state, hops }];
}

function diacetylRest(cellar: Cellar): readonly Reminder[] {
  if (cellar.recipe.yeast.celsius > COOL_PITCH_C) return [];
  const step = cellar.log.steps.get(DIACETYL_STEP);
  const due = dueOf("diacetyl rest", cellar);
  const leftOut = step?.leftOut ?? null;
  const isDone = step !== undefined && step.doneAt !== null;
  const state = leftOut !== null ? "left out" : isDone ? "done" : due.state;
  return [{ kind: "diacetyl rest", ...due, state, hops: [] }];
}

/** When the share is reached: the last reading says so, or the fitted curve does of this moment or of one to come. */
function dueOf(
  kind: ReminderKind,
  { fermentation, now }: Cellar,
): { readonly state: "ahead" | "due"; readonly at: number | null } {
  const share = DUE_AT_SHARE[kind];
  const at = momentOf(share, fermentation);
  const isReached = shareBehind(fermentation, now) >= share;
  return { state: isReached ? "due" : "ahead", at };
}

function momentOf(share: number, { curve, pitchedAt }: Fermentation): number | null {
  if (pitchedAt === null || curve?.ok !== true) return null;
  return pitchedAt + dayOfShare({ ...curve, share }) * DAY_MS;
}

/** The larger of what the last reading shows and what the curve says of now; 0 where neither tells. */
function shareBehind(fermentation: Fermentation, now: number): number {
  const { original, pitchedAt, curve } = fermentation;
  const finalPlato = headingFor(fermentation);
  const last = lastGravity(fermentation);
  if (original === null || pitchedAt === null || finalPlato === null || last === null) return 0;
  const originalPlato = original.plato;
  const ends = { originalPlato, finalPlato: degreesPlato(finalPlato) };
  const day = Math.min(180, Math.max(0, (now - pitchedAt) / DAY_MS));
  try {
    const read = fermentedShare({ ...ends, nowPlato: degreesPlato(last.value) });
    if (curve?.ok !== true) return read;
    return Math.max(read, fermentedShare({ ...ends, nowPlato: platoOnDay({ ...curve, ...ends, day }) }));
  } catch (error) {
    if (error instanceof OutOfRangeError) return 0;
    throw error;
  }
}
