import type { ActionResult } from "@/lib/model/action-result";
import type { RecipeContent } from "@/lib/model/recipe-content";

/** A recipe on its way to be saved; `baseRev` null for one that is new. */
export interface RecipeToSave {
  readonly title: string;
  readonly content: RecipeContent;
  readonly message: string;
  readonly baseRev: number | null;
}

/** The revision that somebody else saved in the meantime. */
export interface NewerRevision {
  readonly rev: number;
  readonly title: string;
  readonly authorName: string;
  readonly message: string;
  readonly content: RecipeContent;
}

export type SaveAnswer =
  | { readonly ok: true; readonly rev: number }
  | { readonly ok: false; readonly reason: "unchanged" }
  | { readonly ok: false; readonly reason: "stale"; readonly newer: NewerRevision };

export type SendRecipe = (recipe: RecipeToSave) => Promise<ActionResult<SaveAnswer>>;
