import type { Draft } from "./draft";

/** The way back and forth through what was done to a draft. */
export interface History {
  readonly past: readonly Step[];
  readonly future: readonly Step[];
  /** What is being typed into at the moment: more of it belongs to the same step. */
  readonly open: { readonly field: string; readonly atMs: number } | null;
  /** What was undone or redone last, to be said aloud. */
  readonly told: string;
}

/** The draft as it was before a step, and the step in words. */
export interface Step {
  readonly draft: Draft;
  readonly words: string;
}

export const NO_HISTORY: History = { past: [], future: [], open: null, told: "" };

/** Drafts share what they have in common, so that many steps cost little. */
const MOST_STEPS = 500;
/** Whoever pauses this long begins something new. */
const PAUSE_MS = 3000;

/** Notes that something was done. Typing on in one field adds to the step that began it. */
export function recorded(
  history: History,
  a: { readonly before: Draft; readonly words: string; readonly field: string | null; readonly atMs: number },
): History {
  const { before, words, field, atMs } = a;
  const open = field === null ? null : { field, atMs };
  const goesOn = open !== null && history.open?.field === field && atMs - history.open.atMs < PAUSE_MS;
  if (goesOn) return { ...history, open, future: [], told: "" };
  return { past: [...history.past, { draft: before, words }].slice(-MOST_STEPS), future: [], open, told: "" };
}

export interface Travelled {
  readonly history: History;
  readonly draft: Draft;
}

/** One step back; null where there is none. */
export function undone({ past, future }: History, now: Draft): Travelled | null {
  const step = past.at(-1);
  if (step === undefined) return null;
  const { words } = step;
  const history = {
    past: past.slice(0, -1),
    future: [{ draft: now, words }, ...future],
    open: null,
    told: `Undone: ${words}`,
  };
  return { history, draft: step.draft };
}

/** One step forth again; null where nothing was undone. */
export function redone({ past, future }: History, now: Draft): Travelled | null {
  const [step, ...rest] = future;
  if (step === undefined) return null;
  const { words } = step;
  const history = { past: [...past, { draft: now, words }], future: rest, open: null, told: `Done again: ${words}` };
  return { history, draft: step.draft };
}
