import { listRecipes } from "@/lib/server/recipes/list";
import type { Member } from "@/lib/server/session";
import { listSharedBrews } from "@/lib/server/shared-brews/reads";
import { listPeople } from "@/lib/server/spaces/reads";

interface Choice {
  readonly value: string;
  readonly text: string;
}

export interface Choices {
  readonly recipes: readonly Choice[];
  readonly sharedBrews: readonly Choice[];
  readonly brewers: readonly Choice[];
}

/** What the fields of a question offer. */
export async function readChoices(member: Member): Promise<Choices> {
  const [recipes, sharedBrews, people] = await Promise.all([
    listRecipes(member),
    listSharedBrews(member),
    listPeople(member),
  ]);
  return {
    recipes: recipes.map(({ id, title }) => ({ value: id, text: title })),
    sharedBrews: sharedBrews.map(({ id, title }) => ({ value: id, text: title })),
    brewers: people.map(({ userId, displayName }) => ({ value: userId, text: displayName })),
  };
}
