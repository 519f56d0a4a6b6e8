"use client";

import { RecipeLedger, type RecipeLedgerProps } from "@/lib/ui/recipe/recipe-ledger";
import type { RecipeToSave } from "@/lib/ui/recipe/save-answer";
import { createRecipeAction } from "./actions";

interface NewRecipeScreenProps extends Omit<RecipeLedgerProps, "saving" | "title"> {
  readonly space: string;
}

/** A recipe that is not saved yet. */
export function NewRecipeScreen({ space, ...shown }: NewRecipeScreenProps) {
  const send = ({ title, content, message }: RecipeToSave) => createRecipeAction({ space, title, content, message });
  const saving = { baseRev: null, send, revisionStem: "" };
  return <RecipeLedger {...shown} title="" saving={saving} />;
}
