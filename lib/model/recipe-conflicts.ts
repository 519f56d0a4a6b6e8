import type { HopAddition, Recipe } from "@/lib/calc/ledger";

/** Two fields that do not go together; the message stands at the one that somebody would change. */
export interface RecipeConflict {
  readonly path: readonly (string | number)[];
  readonly message: string;
}

/** The rules between the fields of a recipe, which each field alone cannot know. */
export function recipeConflicts(recipe: Recipe): readonly RecipeConflict[] {
  const { topUp, intoFermenter, mash, fermentables, hops, yeast } = recipe;
  const found: RecipeConflict[] = [];
  if (topUp >= intoFermenter) {
    const message = `Water after the boil ${topUp} L is not less than the ${intoFermenter} L wanted`;
    found.push({ path: ["topUp"], message });
  }
  if (mash.length === 0 && fermentables.some((row) => row.station === "mash")) {
    found.push({ path: ["mash"], message: "A recipe with grain in the mash needs a mash step" });
  }
  if (yeast.attenuationLow > yeast.attenuationHigh) {
    const message = "Attenuation, low is above attenuation, high";
    found.push({ path: ["yeast", "attenuationLow"], message });
  }
  hops.forEach((hop, index) => found.push(...hopConflicts(recipe, hop, index)));
  return found;
}

function hopConflicts({ boil, stand }: Recipe, hop: HopAddition, index: number): RecipeConflict[] {
  const { name, minutes, use } = hop;
  const path = ["hops", index, "minutes"];
  if (use === "boil" && minutes > boil) {
    return [{ path, message: `${name} goes in ${minutes} min before the end of a boil of ${boil} min` }];
  }
  if (use !== "stand") return [];
  if (stand === null) {
    return [{ path: ["hops", index, "use"], message: `${name} is for a hop stand, and there is none` }];
  }
  if (minutes <= stand.minutes) return [];
  return [{ path, message: `${name} stands for ${minutes} min in a stand of ${stand.minutes} min` }];
}
