import type { RecipeSummary } from "@/lib/model/recipe-content";

export interface RecipeChoice {
  readonly value: string;
  readonly text: string;
}

interface Wanted {
  readonly recipe?: string | string[];
  readonly rev?: string | string[];
}

/** The newest revision of every recipe, and the one that the address asks for, if it is an older one. */
export function recipeChoices(
  recipes: readonly RecipeSummary[],
  wanted: Wanted,
): { readonly choices: readonly RecipeChoice[]; readonly chosen: string } {
  const heads = recipes.map(({ id, title, headRev }) => choice(id, title, headRev));
  const recipe = recipes.find(({ id }) => id === wanted.recipe);
  if (recipe === undefined) return { choices: heads, chosen: heads[0]?.value ?? "" };
  const rev = Number(wanted.rev);
  const isOlder = Number.isInteger(rev) && rev >= 1 && rev < recipe.headRev;
  const asked = choice(recipe.id, recipe.title, isOlder ? rev : recipe.headRev);
  return { choices: isOlder ? [asked, ...heads] : heads, chosen: asked.value };
}

function choice(id: string, title: string, rev: number): RecipeChoice {
  return { value: `${id}/${rev}`, text: `${title}, revision ${rev}` };
}
