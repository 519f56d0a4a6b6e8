import { z } from "zod";
import { counted, revisionNumber } from "./measured";
import { preferencesInput } from "./preferences-input";
import { optionalText, recordId } from "./written";

const LONGEST_NOTES = 20_000;
const MOST_FIELDS = 120;
const MOST_ROWS = 80;

/** One field as it stands on the screen: what was typed, also what is no number yet. */
const keptEntry = z.strictObject({
  text: z.string().max(LONGEST_NOTES),
  /** The value that the text stands for, where it was not typed. */
  exact: z.number().nullable(),
  isTyped: z.boolean(),
  /** The target that the value was solved for, in words. */
  solvedFor: z.string().max(200).optional(),
});

const keptRow = z.strictObject({
  key: z.string().regex(/^[a-z]+-\d{1,6}$/, "This is not the key of a row"),
  cells: z.record(z.string().regex(/^[a-zA-Z]{1,30}$/), keptEntry),
});
const keptRows = z.array(keptRow).max(MOST_ROWS, `A list has at most ${String(MOST_ROWS)} rows`);

/** A recipe as it is being written. It is opened again by the page that wrote it, in the units it was written in. */
export const keptDraft = z.strictObject({
  fields: z
    .record(z.string().regex(/^[a-zA-Z.]{1,60}$/), keptEntry)
    .refine((fields) => Object.keys(fields).length <= MOST_FIELDS, { message: "Too many fields" }),
  rows: z.strictObject({
    steps: keptRows,
    mashGrist: keptRows,
    kettleGrist: keptRows,
    boilHops: keptRows,
    standHops: keptRows,
    dryHops: keptRows,
  }),
  kettle: z.string().max(60),
  /** The page that wrote it: one that hears of a later draft of its own has only missed an answer. */
  writer: recordId,
  note: optionalText("Note on the change", 500),
  preferences: preferencesInput,
});
export type KeptDraft = z.output<typeof keptDraft>;

/** A draft on its way to be kept: 0 as the version says that there was none yet. */
export const draftChange = z.strictObject({
  /** The recipe that it changes, or an identifier of its own where `baseRev` is null. */
  id: recordId,
  baseRev: revisionNumber.nullable(),
  lockVersion: counted("Version", { min: 0, max: 1_000_000_000 }),
  title: z.string().trim().max(160, "Title is longer than 160 characters"),
  kept: keptDraft,
});
export type DraftChange = z.output<typeof draftChange>;

/** One's own draft as it is kept. */
export interface RecipeDraft {
  readonly id: string;
  readonly baseRev: number | null;
  readonly lockVersion: number;
  readonly begunAt: Date;
  readonly savedAt: Date;
  readonly kept: KeptDraft;
}

/** That there is a draft; the text is its writer's alone. */
export interface DraftSummary {
  readonly id: string;
  /** null for a recipe that is new. */
  readonly recipeId: string | null;
  readonly title: string;
  readonly writerName: string;
  readonly isOwn: boolean;
  readonly begunAt: Date;
  readonly savedAt: Date;
}

/** How keeping a draft ended: kept; another page of the same person kept a later one; or it was ended elsewhere. */
export type DraftOutcome =
  | { readonly ok: true; readonly lockVersion: number; readonly savedAt: Date }
  | { readonly ok: false; readonly reason: "stale"; readonly newer: RecipeDraft }
  | { readonly ok: false; readonly reason: "gone" };
