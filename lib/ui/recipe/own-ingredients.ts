import type { HopVariety } from "@/lib/model/hop-varieties";
import type { ClubIngredient } from "@/lib/model/ingredient";
import type { TypicalFermentable } from "@/lib/model/ingredients";
import { nameKey } from "@/lib/model/lot";
import type { YeastClass } from "@/lib/model/yeast-classes";

/** What the editor takes from a hop or a yeast of a list. */
export type ListedHop = Pick<HopVariety, "name" | "alphaLow" | "alphaHigh">;
export type ListedYeast = Omit<YeastClass, "group" | "flocculation" | "trait">;

/** Ingredients of a club as the editor offers them. */
export interface OwnIngredients {
  readonly fermentables: readonly TypicalFermentable[];
  readonly hops: readonly ListedHop[];
  readonly yeasts: readonly ListedYeast[];
}

export const NO_OWN_INGREDIENTS: OwnIngredients = { fermentables: [], hops: [], yeasts: [] };

/** The ingredients of a club that a recipe may name: what is put away is not offered. */
export function offeredInRecipes(ingredients: readonly ClubIngredient[]): OwnIngredients {
  const inUse = ingredients.filter(({ isArchived }) => !isArchived);
  return {
    fermentables: inUse.flatMap(({ name, what }) => (what.kind === "fermentable" ? [{ name, ...what.figures }] : [])),
    hops: inUse.flatMap(({ name, what }) => (what.kind === "hop" ? [{ name, ...what.figures }] : [])),
    yeasts: inUse.flatMap(({ name, what }) => (what.kind === "yeast" ? [{ name, ...what.figures }] : [])),
  };
}

/** The lists with the club's ingredients before them; its word on a name counts, and the name stands once. */
export function withOwn<L extends OwnIngredients>(lists: L, own: OwnIngredients): L {
  return {
    ...lists,
    fermentables: before(own.fermentables, lists.fermentables),
    hops: before(own.hops, lists.hops),
    yeasts: before(own.yeasts, lists.yeasts),
  };
}

function before<T extends { readonly name: string }>(own: readonly T[], listed: readonly T[]): readonly T[] {
  const names = new Set(own.map(({ name }) => nameKey(name)));
  return [...own, ...listed.filter(({ name }) => !names.has(nameKey(name)))];
}
