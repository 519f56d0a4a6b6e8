"use client";

import type { ReactElement, ReactNode } from "react";
import type { RecipeContent } from "@/lib/model/recipe-content";
import { DraftConflict } from "./draft-conflict";
import { DraftLine } from "./draft-line";
import { useEditor } from "./editor-context";
import type { KettleChoice } from "./editor-state";
import { HistoryButtons } from "./history-buttons";
import { RecipeBody } from "./recipe-body";
import { RecipeHead } from "./recipe-head";
import type { NewerRevision, SendRecipe } from "./save-answer";
import { SavePanel } from "./save-panel";
import { ShortcutList } from "./shortcut-list";
import { TargetSection } from "./target-section";
import { useDiscard } from "./use-discard";
import { useDraftKeeper, type Drafting } from "./use-draft-keeper";
import { useHistoryKeys } from "./use-history-keys";
import { useSave } from "./use-save";

/** How a recipe that is written here is kept and published. */
export interface Saving {
  readonly drafting: Drafting;
  /** The newest revision; null for a recipe that is not published yet. */
  readonly head: NewerRevision | null;
  readonly send: SendRecipe;
  /** Publishes the draft as a recipe of its own and goes there. */
  readonly sendCopy: SendRecipe;
  /** Where the revisions of this recipe are read; a number follows. */
  readonly revisionStem: string;
}

export interface RecipeWritingProps {
  readonly title: string;
  readonly content: RecipeContent;
  readonly kettles: readonly KettleChoice[];
  readonly saving: Saving;
  /** What else is known of the recipe, such as who has a draft of it. */
  readonly children?: ReactNode;
}

/** The recipe with all that belongs to writing: steps back and forth, the draft, publishing. */
export function RecipeWriting({ title, content, kettles, saving, children }: RecipeWritingProps): ReactElement {
  const { store, preferences } = useEditor();
  const { drafting, head } = saving;
  const keeper = useDraftKeeper({ drafting, baseRev: head?.rev ?? null, store, preferences });
  const discard = useDiscard({ keeper, drafting, title, content, baseRev: head?.rev ?? null });
  const save = useSave({ keeper, kettles, saving });
  useHistoryKeys(store);
  return (
    <>
      <div className="no-print mb-3 flex flex-wrap items-center justify-between gap-x-6">
        <span className="flex flex-wrap items-center gap-x-4">
          <HistoryButtons />
          <ShortcutList />
        </span>
        <DraftLine keeper={keeper} onDiscard={() => void discard()} />
      </div>
      {children}
      <DraftConflict keeper={keeper} />
      <RecipeHead kettles={kettles} />
      <TargetSection />
      <RecipeBody kettles={kettles} />
      <SavePanel kettles={kettles} saving={save} revisionStem={saving.revisionStem} />
    </>
  );
}
