import { genericNamed } from "@/lib/model/generic-ingredients";
import type { ClubIngredient } from "@/lib/model/ingredient";
import type { IngredientLot } from "@/lib/model/ingredient-lot";
import { nameKey } from "@/lib/model/lot";

/** The page of the ingredient that a lot is of; the list, searched for its name, where no page is. */
export function ingredientPath(
  home: string,
  { name, what: { kind } }: Pick<IngredientLot, "name" | "what">,
  own: readonly ClubIngredient[],
): string {
  const ofClub = own.find((each) => {
    return !each.isArchived && each.what.kind === kind && nameKey(each.name) === nameKey(name);
  });
  const id = ofClub?.id ?? genericNamed(kind, name)?.slug;
  return id === undefined ? `${home}?text=${encodeURIComponent(name)}` : `${home}/${id}`;
}
