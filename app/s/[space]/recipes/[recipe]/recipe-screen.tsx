"use client";

import { useRouter } from "next/navigation";
import { RecipeLedger, type RecipeLedgerProps } from "@/lib/ui/recipe/recipe-ledger";
import type { RecipeToSave } from "@/lib/ui/recipe/save-answer";
import { saveRevisionAction } from "./actions";

interface RecipeScreenProps extends Omit<RecipeLedgerProps, "saving"> {
  readonly space: string;
  readonly id: string;
  readonly rev: number;
  readonly mayWrite: boolean;
}

/** The ledger of a stored recipe; whoever may not write reads it. */
export function RecipeScreen({ space, id, rev, mayWrite, ...shown }: RecipeScreenProps) {
  const router = useRouter();

  async function send(recipe: RecipeToSave) {
    const answer = await saveRevisionAction({ space, id, ...recipe });
    if (answer.status === "ok" && answer.data.ok) router.refresh();
    return answer;
  }

  const saving = mayWrite ? { baseRev: rev, send, revisionStem: `/s/${space}/recipes/${id}/revisions/` } : null;
  return <RecipeLedger {...shown} saving={saving} />;
}
