import type { AddressParts } from "./club-addresses";

/** The pages that a club opens most, by what they are. */
export function mostUsedPages({
  space,
  recipe,
  brew,
  sharedBrew,
  address,
}: AddressParts): Readonly<Record<string, string>> {
  const club = `/s/${space ?? ""}`;
  return {
    "start, signed in": "/",
    "home of the club": club,
    recipes: `${club}/recipes`,
    recipe: `${club}/recipes/${recipe ?? ""}`,
    "recipe on every kettle": `${club}/recipes/${recipe ?? ""}/kettles`,
    brews: `${club}/brews`,
    "brew with its log": `${club}/brews/${brew ?? ""}`,
    "shared brew": `${club}/shared-brews/${sharedBrew ?? ""}`,
    "search for a word": `${club}/search?q=porter`,
    "published recipe": `/p/${address ?? ""}`,
  };
}
