"use client";

import { useEffect, useState, useSyncExternalStore } from "react";
import type { ActionResult } from "@/lib/model/action-result";
import type { Preferences } from "@/lib/model/preferences";
import type { DraftChange, DraftOutcome, RecipeDraft } from "@/lib/model/recipe-draft";
import type { EditorStore } from "./editor-store";
import { DraftKeeper, type KeepStatus } from "./draft-keeper";
import { draftFromKept, keptDraftOf } from "./kept-draft";
import { localDrafts } from "./local-drafts";
import { rememberDraft } from "./remembered-drafts";

/** How and where the draft of one page is kept. */
export interface Drafting {
  readonly id: string;
  /** One's own draft as the server has it; null for none. */
  readonly initial: RecipeDraft | null;
  /** Tells the person and the club apart in the browser's own memory. */
  readonly owner: string;
  readonly send: (change: DraftChange) => Promise<ActionResult<DraftOutcome>>;
  readonly discard: () => Promise<ActionResult<null>>;
}

interface Kept {
  readonly drafting: Drafting;
  readonly baseRev: number | null;
  readonly store: EditorStore;
  readonly preferences: Preferences;
}

/** Keeps what is written from the first change on, and opens what this browser kept and the server did not get. */
export function useDraftKeeper(a: Kept): DraftKeeper {
  // The page of one draft stays with it; another draft is another page.
  const [page] = useState(a);
  const [keeper] = useState(() => keeperOf(page));
  useEffect(() => {
    keeper.start();
    openLeftOver(page, keeper);
    const stop = onChange(page.store, keeper.changed);
    const onHidden = (): void => {
      if (document.visibilityState === "hidden") keeper.hurry();
    };
    document.addEventListener("visibilitychange", onHidden);
    window.addEventListener("pagehide", keeper.keepLocally);
    window.addEventListener("online", keeper.hurry);
    return () => {
      stop();
      document.removeEventListener("visibilitychange", onHidden);
      window.removeEventListener("pagehide", keeper.keepLocally);
      window.removeEventListener("online", keeper.hurry);
      keeper.stop();
    };
  }, [page, keeper]);
  return keeper;
}

function openLeftOver({ drafting, store, preferences }: Kept, keeper: DraftKeeper): void {
  const left = localDrafts(drafting.owner).read(drafting.id);
  if (left === null) return;
  const { kettle, note } = left.change.kept;
  const draft = draftFromKept(left.change.kept, store.state().draft, preferences);
  store.dispatch({ type: "open", draft, kettle, note });
  keeper.found(left.change, drafting.initial);
}

/** Tells of what somebody changed, not of what was opened instead. */
function onChange(store: EditorStore, tell: () => void): () => void {
  let last = store.state();
  return store.subscribe(() => {
    const now = store.state();
    const isChanged = now.draft !== last.draft || now.kettle !== last.kettle || now.note !== last.note;
    const isOpened = now.openings !== last.openings;
    last = now;
    if (isChanged && !isOpened) tell();
  });
}

function keeperOf({ drafting, baseRev, store, preferences }: Kept): DraftKeeper {
  const writer = crypto.randomUUID();
  return new DraftKeeper({
    id: drafting.id,
    baseRev: drafting.initial?.baseRev ?? baseRev,
    initial: drafting.initial,
    send: drafting.send,
    local: localDrafts(drafting.owner),
    remember: (draft) => rememberDraft(`${drafting.owner}.${drafting.id}`, draft),
    content: () => {
      const { draft, kettle, note } = store.state();
      const title = draft.fields.title.text.trim().slice(0, 160);
      return { title, kept: keptDraftOf({ draft, kettle, note, writer, preferences }) };
    },
  });
}

export function useKeepStatus(keeper: DraftKeeper): KeepStatus {
  return useSyncExternalStore(keeper.subscribe, keeper.state, keeper.state);
}
