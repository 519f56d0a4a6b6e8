"use client";

import type { RecipeDraft } from "@/lib/model/recipe-draft";
import { RecipeLedger, type RecipeLedgerProps } from "@/lib/ui/recipe/recipe-ledger";
import { latestDraft } from "@/lib/ui/recipe/remembered-drafts";
import type { RecipeToSave } from "@/lib/ui/recipe/save-answer";
import { discardDraftAction, saveDraftAction } from "../draft-actions";
import { createRecipeAction } from "./actions";

interface NewRecipeScreenProps extends Omit<RecipeLedgerProps, "saving" | "title"> {
  readonly space: string;
  readonly userId: string;
  /** What the draft is kept under until it is a recipe. */
  readonly draftId: string;
  readonly draft: RecipeDraft | null;
}

/** A recipe that is not saved yet. */
export function NewRecipeScreen({ space, userId, draftId, draft, ...shown }: NewRecipeScreenProps) {
  const send = ({ title, content, message }: RecipeToSave) =>
    createRecipeAction({ space, draftId, title, content, message });
  const saving = {
    head: null,
    send,
    sendCopy: send,
    revisionStem: "",
    drafting: {
      id: draftId,
      initial: latestDraft(`${userId}.${space}.${draftId}`, draft),
      owner: `${userId}.${space}`,
      send: (change: object) => {
        // The address leads back to the draft, also after a reload.
        window.history.replaceState(null, "", `?draft=${draftId}`);
        return saveDraftAction({ space, ...change });
      },
      discard: () => discardDraftAction({ space, id: draftId }),
    },
  };
  return <RecipeLedger {...shown} title="" saving={saving} />;
}
