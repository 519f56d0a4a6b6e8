"use client";

import { useMemo, useState, type ReactElement } from "react";
import type { ActionResult } from "@/lib/model/action-result";
import type { Preferences } from "@/lib/model/preferences";
import type { RecipeContent } from "@/lib/model/recipe-content";
import { ExplanationPanel } from "../explanation-panel";
import { useHydrated } from "../use-hydrated";
import { ChoiceLists } from "./choice-lists";
import { draftFromContent } from "./draft-from-content";
import { EditorContext, type Editor } from "./editor-context";
import { editorReducer, openEditor, type KettleChoice } from "./editor-state";
import { createEditorStore } from "./editor-store";
import { HistoryButtons } from "./history-buttons";
import { RecipeBody } from "./recipe-body";
import { RecipeHead } from "./recipe-head";
import type { RecipeToSave, SaveAnswer } from "./save-answer";
import { SavePanel } from "./save-panel";
import { SpokenSummary } from "./spoken-summary";
import { useDelayedIntervals } from "./use-delayed-intervals";
import { useExplanation } from "./use-explanation";
import { useHistoryKeys } from "./use-history-keys";
import { useReference } from "./use-reference";

/**
 * The recipe as one ledger: ingredients stand where they go in, and every number follows each keystroke.
 *
 * - `kettles` to compute on, the one that the recipe was written on first.
 * - `saving` null shows the recipe to be read only; it can still be computed on other kettles.
 */
export interface RecipeLedgerProps {
  readonly title: string;
  readonly content: RecipeContent;
  readonly kettles: readonly KettleChoice[];
  readonly preferences: Preferences;
  readonly saving: {
    readonly baseRev: number | null;
    readonly send: (recipe: RecipeToSave) => Promise<ActionResult<SaveAnswer>>;
    /** Where the revisions of this recipe are read; a number follows. */
    readonly revisionStem: string;
  } | null;
}

export function RecipeLedger({ title, content, kettles, preferences, saving }: RecipeLedgerProps): ReactElement {
  const [store] = useState(() => {
    const setting = { kettles, preferences };
    const draft = draftFromContent({ title, content, preferences });
    return createEditorStore(editorReducer(setting), openEditor(draft, kettles[0]?.id ?? "", setting));
  });
  const isReadOnly = saving === null;
  const reference = useReference();
  const { explanation, open, close } = useExplanation(store);
  const isHydrated = useHydrated();
  useDelayedIntervals(store);
  useHistoryKeys(store, isReadOnly);
  const context = useMemo<Editor>(
    () => ({ preferences, isReadOnly, store, dispatch: store.dispatch, reference, explain: open }),
    [preferences, isReadOnly, store, reference, open],
  );
  return (
    <EditorContext value={context}>
      {/* Before the page has its scripts, what somebody types would be lost. */}
      <fieldset disabled={!isHydrated} className="contents">
        {isReadOnly ? null : <HistoryButtons />}
        <RecipeHead kettles={kettles} />
        <RecipeBody kettles={kettles} />
        {saving === null ? null : <SavePanel kettles={kettles} {...saving} />}
        <SpokenSummary />
        <ChoiceLists />
        <ExplanationPanel explanation={explanation} preferences={preferences} onClose={close} onFollow={open} />
      </fieldset>
    </EditorContext>
  );
}
