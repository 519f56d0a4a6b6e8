"use client";

import { createContext, useContext } from "react";
import { DEFAULT_PREFERENCES, type Preferences } from "@/lib/model/preferences";
import type { EditorAction } from "./editor-state";
import type { Reference } from "./use-reference";

/** What every field of the recipe ledger needs and what does not change while somebody types. */
export interface Editor {
  readonly preferences: Preferences;
  /** A recipe that is only read shows its amounts as text. */
  readonly isReadOnly: boolean;
  readonly dispatch: (action: EditorAction) => void;
  /** null until the lists have arrived. */
  readonly reference: Reference | null;
  /** Opens the explanation of a number, or of what a row gives. */
  readonly explain: (id: string) => void;
}

export const EditorContext = createContext<Editor>({
  preferences: DEFAULT_PREFERENCES,
  isReadOnly: true,
  dispatch: () => undefined,
  reference: null,
  explain: () => undefined,
});

export function useEditor(): Editor {
  return useContext(EditorContext);
}
