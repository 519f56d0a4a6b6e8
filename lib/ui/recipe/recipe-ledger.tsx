"use client";

import dynamic from "next/dynamic";
import { useMemo, useReducer, type ReactElement } from "react";
import type { ActionResult } from "@/lib/model/action-result";
import type { Preferences } from "@/lib/model/preferences";
import type { RecipeContent } from "@/lib/model/recipe-content";
import { ExplanationPanel } from "../explanation-panel";
import { useHydrated } from "../use-hydrated";
import { BeerPanel } from "./beer-panel";
import { ChoiceLists } from "./choice-lists";
import { draftFromContent } from "./draft-from-content";
import { EditorContext, type Editor } from "./editor-context";
import { editorReducer, openEditor, type KettleChoice } from "./editor-state";
import { RecipeHead } from "./recipe-head";
import { RecipeNotes } from "./recipe-notes";
import { RecipeTable } from "./recipe-table";
import { RemovedLine } from "./removed-line";
import type { RecipeToSave, SaveAnswer } from "./save-answer";
import { SavePanel } from "./save-panel";
import { SpokenSummary } from "./spoken-summary";
import { useExplanation } from "./use-explanation";
import { useIntervals } from "./use-intervals";
import { useReference } from "./use-reference";
import { useSave } from "./use-save";

// Limits come with their words, which nobody needs whose recipe fits.
const FitNotice = dynamic(() => import("./fit-notice"));

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
  const setting = useMemo(() => ({ kettles, preferences }), [kettles, preferences]);
  const reducer = useMemo(() => editorReducer(setting), [setting]);
  const [editor, dispatch] = useReducer(reducer, null, () =>
    openEditor(draftFromContent({ title, content, preferences }), kettles[0]?.id ?? "", setting),
  );
  const reference = useReference();
  const { explanation, open, close } = useExplanation(editor.shown);
  const isReadOnly = saving === null;
  const isHydrated = useHydrated();
  const context = useMemo<Editor>(
    () => ({ preferences, isReadOnly, dispatch, reference, explain: open }),
    [preferences, isReadOnly, reference, open],
  );
  const save = useSave({ baseRev: saving?.baseRev ?? null, kettles, send: saving?.send ?? refuse });
  const ranges = useIntervals(editor.shown);
  const brewed = editor.shown?.brewed ?? null;
  const broken = brewed?.ledger.limits.filter(({ ok }) => !ok) ?? [];
  const kettleName = kettles.find(({ id }) => id === editor.kettle)?.equipment.name ?? "";
  return (
    <EditorContext value={context}>
      {/* Before the page has its scripts, what somebody types would be lost. */}
      <fieldset disabled={!isHydrated} className="contents">
        <RecipeHead editor={editor} kettles={kettles} />
        {/* The beer stays in sight as long as the rows do. */}
        <div>
          <BeerPanel editor={editor} intervals={ranges} />
          {broken.length === 0 ? null : <FitNotice {...{ broken, kettleName, preferences }} />}
          <RecipeTable editor={editor} intervals={ranges} kettleName={kettleName} />
        </div>
        <RemovedLine removed={editor.removed} />
        <RecipeNotes draft={editor.draft} />
        {saving === null ? null : (
          <SavePanel
            saving={save}
            editor={editor}
            kettleName={kettleName}
            preferences={preferences}
            revisionHref={(rev) => `${saving.revisionStem}${rev}`}
          />
        )}
        {brewed === null ? null : (
          <SpokenSummary ledger={brewed.ledger} waitingFor={editor.waitingFor} preferences={preferences} />
        )}
        <ChoiceLists />
        <ExplanationPanel explanation={explanation} preferences={preferences} onClose={close} onFollow={open} />
      </fieldset>
    </EditorContext>
  );
}

function refuse(): Promise<ActionResult<SaveAnswer>> {
  return Promise.resolve({ status: "refused", message: "This recipe is only read here." });
}
