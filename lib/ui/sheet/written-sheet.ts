import type { Preferences } from "@/lib/model/preferences";
import type { RecipeRevision } from "@/lib/model/recipe-content";
import type { RecipeSheetProps } from "./recipe-sheet";

/** The sheet of a revision on the kettle that it was written on. */
export function writtenSheet(
  { rev, content: { recipe, notes, writtenOn } }: Pick<RecipeRevision, "rev" | "content">,
  preferences: Preferences,
): RecipeSheetProps {
  const { name: kettle, equipment, ambient } = writtenOn;
  return { rev, kettle, equipment, ambient, recipe, notes, preferences };
}
