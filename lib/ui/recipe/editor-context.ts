"use client";

import { createContext, useContext } from "react";
import type { Preferences } from "@/lib/model/preferences";
import type { EditorAction } from "./editor-action";
import type { EditorStore } from "./editor-store";
import type { Reference } from "./use-reference";

/** What every field of the recipe ledger needs and what does not change while somebody types. */
export interface Editor {
  readonly preferences: Preferences;
  /** A recipe that is only read shows its amounts as text. */
  readonly isReadOnly: boolean;
  readonly store: EditorStore;
  readonly dispatch: (action: EditorAction) => void;
  /** null until the lists have arrived. */
  readonly reference: Reference | null;
  /** Opens the explanation of a number, or of what a row gives. */
  readonly explain: (id: string) => void;
}

export const EditorContext = createContext<Editor | null>(null);

export function useEditor(): Editor {
  const editor = useContext(EditorContext);
  if (editor === null) throw new Error("a part of the recipe editor stands outside of it");
  return editor;
}
