"use client";

import { useState, useTransition } from "react";
import type { ActionResult } from "@/lib/model/action-result";
import type { FieldErrors } from "@/lib/model/field-errors";
import type { DraftKeeper } from "./draft-keeper";
import { useEditor } from "./editor-context";
import type { EditorState, KettleChoice } from "./editor-state";
import type { NewerRevision, RecipeToSave, SaveAnswer, SendRecipe } from "./save-answer";

export type SaveState =
  | { readonly status: "none" | "unchanged" }
  | { readonly status: "saved"; readonly rev: number }
  | { readonly status: "stale"; readonly newer: NewerRevision }
  | { readonly status: "wrong"; readonly errors: FieldErrors };

/** Publishing, as it stands. */
export interface Publishing {
  readonly state: SaveState;
  readonly isPending: boolean;
  /** The revision that the next save goes on top of; null for a recipe that is not saved yet. */
  readonly baseRev: number | null;
  readonly save: () => void;
  readonly saveCopy: () => void;
}

/** Publishes a draft. Nothing is overwritten: a save on an old revision is answered with the newer one. */
export function useSave(a: {
  readonly keeper: DraftKeeper;
  readonly kettles: readonly KettleChoice[];
  readonly saving: { readonly head: NewerRevision | null; readonly send: SendRecipe; readonly sendCopy: SendRecipe };
}): Publishing {
  const { keeper, kettles, saving } = a;
  const { store } = useEditor();
  const [state, setState] = useState<SaveState>(() => firstState(keeper, saving.head));
  const [baseRev, setBaseRev] = useState(saving.head?.rev ?? null);
  const [isPending, startTransition] = useTransition();

  function publish(send: SendRecipe): void {
    const editor = store.state();
    const recipe = recipeToSave(editor, kettles, baseRev);
    if (recipe === null) {
      setState({ status: "wrong", errors: problemsOf(editor) });
      return;
    }
    startTransition(async () => {
      // A draft that is kept while it is published would come back to life.
      keeper.pause();
      const next = stateOf(await unlessLost(send(recipe)), editor);
      setState(next);
      if (next.status === "stale") setBaseRev(next.newer.rev);
      if (next.status !== "saved") {
        keeper.resume();
        return;
      }
      setBaseRev(next.rev);
      keeper.reset({ baseRev: next.rev, initial: null });
      if (store.state().draft !== editor.draft) keeper.changed();
    });
  }

  return {
    state,
    isPending,
    baseRev,
    save: () => publish(saving.send),
    // The draft was based on this revision, whatever it would be saved on top of now.
    saveCopy: () => publish((recipe) => saving.sendCopy({ ...recipe, baseRev: keeper.isOn() })),
  };
}

/** Somebody may have published since the draft was begun. */
function firstState(keeper: DraftKeeper, head: NewerRevision | null): SaveState {
  return head !== null && keeper.isOn() !== head.rev ? { status: "stale", newer: head } : { status: "none" };
}

async function unlessLost(answer: Promise<ActionResult<SaveAnswer>>): Promise<ActionResult<SaveAnswer>> {
  try {
    return await answer;
  } catch (error) {
    // A redirect of Next is no failure.
    if (typeof error === "object" && error !== null && "digest" in error) throw error;
    return { status: "refused", message: "Not saved: the server did not answer. Your draft is still here; try again." };
  }
}

function problemsOf({ reading, waitingFor, draft }: EditorState): FieldErrors {
  const title = draft.fields.title.text.trim() === "" ? { title: "Title is empty" } : {};
  const others = reading.written === null ? reading.problems : { "": waitingFor.join("; ") };
  return { ...title, ...Object.fromEntries(Object.entries(others).filter(([, message]) => message !== "")) };
}

function recipeToSave(
  editor: EditorState,
  kettles: readonly KettleChoice[],
  baseRev: number | null,
): RecipeToSave | null {
  const { draft, reading, waitingFor, note } = editor;
  const kettle = kettles.find(({ id }) => id === editor.kettle);
  const title = draft.fields.title.text.trim();
  if (reading.written === null || waitingFor.length > 0 || kettle === undefined || title === "") return null;
  const { recipe, ambient } = reading.written;
  const style = draft.fields.style.text;
  return {
    title,
    message: note,
    baseRev,
    content: {
      recipe,
      entered: { ...reading.entered },
      style: style === "" ? null : style,
      notes: draft.fields.notes.text,
      writtenOn: { name: kettle.equipment.name, equipment: kettle.equipment, ambient },
    },
  };
}

const RECIPE_PATH = /^content\.(?:recipe\.)?/;

function stateOf(answer: ActionResult<SaveAnswer>, { reading }: EditorState): SaveState {
  if (answer.status === "refused") return { status: "wrong", errors: { "": answer.message } };
  if (answer.status === "invalid") {
    const errors = Object.entries(answer.fieldErrors).map(([path, message]) => {
      const stored = path.replace(RECIPE_PATH, "");
      return [reading.controls.get(stored) ?? stored, message] as const;
    });
    return { status: "wrong", errors: Object.fromEntries(errors) };
  }
  const { data } = answer;
  if (data.ok) return { status: "saved", rev: data.rev };
  return data.reason === "stale" ? { status: "stale", newer: data.newer } : { status: "unchanged" };
}
