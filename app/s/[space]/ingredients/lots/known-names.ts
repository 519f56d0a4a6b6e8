import { GENERIC_INGREDIENTS } from "@/lib/model/generic-ingredients";
import type { ClubIngredient } from "@/lib/model/ingredient";
import type { IngredientKind } from "@/lib/model/ingredient-kinds";

/** Names of a kind, those of the club first. */
export function knownNames(kind: IngredientKind, own: readonly ClubIngredient[]): readonly string[] {
  const ofClub = own.filter(({ what, isArchived }) => what.kind === kind && !isArchived).map(({ name }) => name);
  const generic = GENERIC_INGREDIENTS.filter(({ what }) => what.kind === kind).map(({ name }) => name);
  return [...new Set([...ofClub, ...generic])];
}
