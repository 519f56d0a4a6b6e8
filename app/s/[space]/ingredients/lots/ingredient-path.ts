import { GENERIC_INGREDIENTS, nameKey } from "@/lib/model/generic-ingredients";
import type { ClubIngredient } from "@/lib/model/ingredient";
import type { IngredientLot } from "@/lib/model/ingredient-lot";

/** The page of the ingredient that a lot is of; the list, searched for its name, where no page is. */
export function ingredientPath(
  home: string,
  { name, what: { kind } }: Pick<IngredientLot, "name" | "what">,
  own: readonly ClubIngredient[],
): string {
  const isThis = (each: { readonly name: string; readonly what: { readonly kind: string } }): boolean =>
    each.what.kind === kind && nameKey(each.name) === nameKey(name);
  const id = own.find((each) => !each.isArchived && isThis(each))?.id ?? GENERIC_INGREDIENTS.find(isThis)?.slug;
  return id === undefined ? `${home}?text=${encodeURIComponent(name)}` : `${home}/${id}`;
}
