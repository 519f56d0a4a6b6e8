"use client";

import { useRouter } from "next/navigation";
import type { ReactNode } from "react";
import type { RecipeDraft } from "@/lib/model/recipe-draft";
import { RecipeLedger, type RecipeLedgerProps } from "@/lib/ui/recipe/recipe-ledger";
import { latestDraft } from "@/lib/ui/recipe/remembered-drafts";
import type { NewerRevision, RecipeToSave } from "@/lib/ui/recipe/save-answer";
import { discardDraftAction, saveDraftAction } from "../draft-actions";
import { keepMineAction, saveRevisionAction } from "./actions";

interface RecipeScreenProps extends Omit<RecipeLedgerProps, "saving" | "title" | "content"> {
  readonly space: string;
  readonly userId: string;
  readonly id: string;
  readonly head: NewerRevision;
  readonly draft: RecipeDraft | null;
  readonly mayWrite: boolean;
  readonly children: ReactNode;
}

/** The ledger of a stored recipe; whoever may not write reads it. */
export function RecipeScreen({ space, userId, id, head, draft, mayWrite, ...shown }: RecipeScreenProps) {
  const router = useRouter();

  async function send(recipe: RecipeToSave) {
    const answer = await saveRevisionAction({ space, id, ...recipe });
    if (answer.status === "ok" && answer.data.ok) router.refresh();
    return answer;
  }

  const saving = {
    head,
    send,
    sendCopy: (recipe: RecipeToSave) => keepMineAction({ space, id, ...recipe }),
    revisionStem: `/s/${space}/recipes/${id}/revisions/`,
    drafting: {
      id,
      initial: latestDraft(`${userId}.${space}.${id}`, draft),
      owner: `${userId}.${space}`,
      send: (change: object) => saveDraftAction({ space, ...change }),
      discard: () => discardDraftAction({ space, id }),
    },
  };
  const { title, content } = head;
  return <RecipeLedger {...shown} title={title} content={content} saving={mayWrite ? saving : null} />;
}
