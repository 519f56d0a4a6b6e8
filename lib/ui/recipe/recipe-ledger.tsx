"use client";

import dynamic from "next/dynamic";
import { useMemo, useState, type ReactElement, type ReactNode } from "react";
import { intervals, type Intervals } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import type { RecipeContent } from "@/lib/model/recipe-content";
import { ExplanationPanel } from "../explanation-panel";
import { isSame } from "../is-same";
import { useHydrated } from "../use-hydrated";
import { ChoiceLists } from "./choice-lists";
import type { Brewed } from "./compute";
import { draftFromContent } from "./draft-from-content";
import { EditorContext, type Editor } from "./editor-context";
import { editorReducer, openEditor, type EditorState, type KettleChoice } from "./editor-state";
import { createEditorStore } from "./editor-store";
import { draftFromKept } from "./kept-draft";
import { NO_OWN_INGREDIENTS, type OwnIngredients } from "./own-ingredients";
import { RecipeBody } from "./recipe-body";
import { RecipeHead } from "./recipe-head";
import { RecipeWriting, type Saving } from "./recipe-writing";
import { SpokenSummary } from "./spoken-summary";
import { useDelayedIntervals } from "./use-delayed-intervals";
import { useExplanation } from "./use-explanation";
import { useReference } from "./use-reference";

// Whoever opens no explanation tries nothing out.
const WhatIfSection = dynamic(() => import("./what-if-section"));

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
  readonly saving: Saving | null;
  /** Of the content on its own kettle, where they are known; they are computed otherwise. */
  readonly ranges?: Intervals | null;
  /** Ingredients of the club, offered by name. */
  readonly own?: OwnIngredients | undefined;
  /** What else is known of a recipe that is written here. */
  readonly children?: ReactNode;
}

export function RecipeLedger(props: RecipeLedgerProps): ReactElement {
  const { title, content, kettles, preferences, saving, children } = props;
  const [store] = useState(() => createEditorStore(editorReducer({ kettles, preferences }), firstState(props)));
  const isReadOnly = saving === null;
  const reference = useReference(props.own ?? NO_OWN_INGREDIENTS);
  const { explanation, explained, open, close } = useExplanation(store);
  const isHydrated = useHydrated();
  useDelayedIntervals(store);
  const context = useMemo<Editor>(
    () => ({ preferences, isReadOnly, store, dispatch: store.dispatch, reference, explain: open }),
    [preferences, isReadOnly, store, reference, open],
  );
  return (
    <EditorContext value={context}>
      {/* Before the page has its scripts, what somebody types would be lost. */}
      <fieldset disabled={!isHydrated} className="contents">
        {saving === null ? (
          <>
            <RecipeHead kettles={kettles} />
            <RecipeBody kettles={kettles} />
          </>
        ) : (
          <RecipeWriting {...{ title, content, kettles, saving }}>{children}</RecipeWriting>
        )}
        <SpokenSummary />
        <ChoiceLists />
        <ExplanationPanel explanation={explanation} preferences={preferences} onClose={close} onFollow={open}>
          {explanation === null ? null : <WhatIfSection key={explained} {...{ explained, explanation }} />}
        </ExplanationPanel>
      </fieldset>
    </EditorContext>
  );
}

/** With its intervals from the first moment; later ones follow when somebody pauses. */
function firstState(props: RecipeLedgerProps): EditorState {
  const state = openedState(props);
  const { shown } = state;
  if (shown === null) return state;
  const known = isAsWritten(shown.brewed, props.content) ? props.ranges : null;
  return { ...state, ranges: { of: shown, intervals: known ?? intervals(shown.brewed) } };
}

/** Whether a draft computes exactly what is stored: not another kettle, and no figure rounded to a unit. */
function isAsWritten({ recipe, equipment, ambient }: Brewed, { recipe: stored, writtenOn }: RecipeContent): boolean {
  const written = { recipe: stored, equipment: writtenOn.equipment, ambient: writtenOn.ambient };
  return isSame({ recipe, equipment, ambient }, written);
}

/** One's own draft where there is one, and otherwise what is published. */
function openedState({ title, content, kettles, preferences, saving }: RecipeLedgerProps): EditorState {
  const setting = { kettles, preferences };
  const published = draftFromContent({ title, content, preferences });
  const kept = saving?.drafting.initial?.kept ?? null;
  if (kept === null) return openEditor(published, "", setting);
  return { ...openEditor(draftFromKept(kept, published, preferences), kept.kettle, setting), note: kept.note };
}
