"use client";

import { useState, useTransition } from "react";
import type { ActionResult } from "@/lib/model/action-result";
import type { FieldErrors } from "@/lib/model/field-errors";
import type { EditorState, KettleChoice } from "./editor-state";
import type { NewerRevision, RecipeToSave, SaveAnswer } from "./save-answer";

export type SaveState =
  | { readonly status: "none" | "unchanged" }
  | { readonly status: "saved"; readonly rev: number }
  | { readonly status: "stale"; readonly newer: NewerRevision }
  | { readonly status: "wrong"; readonly errors: FieldErrors };

interface Saving {
  readonly state: SaveState;
  readonly isPending: boolean;
  /** The revision that the next save goes on top of; null for a recipe that is not saved yet. */
  readonly baseRev: number | null;
  readonly save: (editor: EditorState, message: string) => void;
}

/** Saves a draft. Nothing is overwritten: a save on an old revision is answered with the newer one. */
export function useSave(a: {
  readonly baseRev: number | null;
  readonly kettles: readonly KettleChoice[];
  readonly send: (recipe: RecipeToSave) => Promise<ActionResult<SaveAnswer>>;
}): Saving {
  const [state, setState] = useState<SaveState>({ status: "none" });
  const [baseRev, setBaseRev] = useState(a.baseRev);
  const [isPending, startTransition] = useTransition();

  function save(editor: EditorState, message: string): void {
    const recipe = recipeToSave(editor, a.kettles, message, baseRev);
    if (recipe === null) {
      setState({ status: "wrong", errors: problemsOf(editor) });
      return;
    }
    startTransition(async () => {
      const next = stateOf(await a.send(recipe), editor);
      setState(next);
      if (next.status === "saved") setBaseRev(next.rev);
      if (next.status === "stale") setBaseRev(next.newer.rev);
    });
  }

  return { state, isPending, baseRev, save };
}

function problemsOf({ reading, waitingFor, draft }: EditorState): FieldErrors {
  const title = draft.fields.title.text.trim() === "" ? { title: "Title is empty" } : {};
  const others = reading.written === null ? reading.problems : { "": waitingFor.join("; ") };
  return { ...title, ...Object.fromEntries(Object.entries(others).filter(([, message]) => message !== "")) };
}

function recipeToSave(
  editor: EditorState,
  kettles: readonly KettleChoice[],
  message: string,
  baseRev: number | null,
): RecipeToSave | null {
  const { draft, reading, waitingFor } = editor;
  const kettle = kettles.find(({ id }) => id === editor.kettle);
  const title = draft.fields.title.text.trim();
  if (reading.written === null || waitingFor.length > 0 || kettle === undefined || title === "") return null;
  const { recipe, ambient } = reading.written;
  const style = draft.fields.style.text;
  return {
    title,
    message,
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
