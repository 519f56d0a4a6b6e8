import type { Ambient, Equipment, Recipe } from "@/lib/calc/ledger";
import type { RecipeRevision } from "@/lib/model/recipe-content";
import type { RevisionReference } from "@/lib/model/revision-reference";

/** One side of a comparison. */
export interface ComparedText {
  readonly name: string;
  readonly kettleName: string;
  readonly recipe: Recipe;
  readonly equipment: Equipment;
  readonly ambient: Ambient;
}

export function comparedText({ title, rev, content }: RecipeRevision, reference: RevisionReference): ComparedText {
  const { name: kettleName, equipment, ambient } = content.writtenOn;
  const name = reference.recipe === null ? `Revision ${rev}` : `${title}, revision ${rev}`;
  return { name, kettleName, equipment, ambient, recipe: content.recipe };
}
