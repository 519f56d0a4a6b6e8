import { newBrew, type NewBrew } from "@/lib/model/brew-input";
import { equipmentInput } from "@/lib/model/equipment";
import { newRecipe } from "@/lib/model/recipe-content";
import { AS_WRITTEN } from "@/lib/model/shared-brew-rules";
import { planBrew } from "@/lib/server/brews/plan";
import { createEquipment } from "@/lib/server/equipment/writes";
import { createRecipe } from "@/lib/server/recipes/writes";
import type { Member } from "@/lib/server/session";
import { createSharedBrew } from "@/lib/server/shared-brews/writes";
import { sampleAmbient, sampleContent, sampleEquipment, sampleRecipe } from "./sample-recipe";

export const parsedRecipe = (title = "Test ale") => newRecipe.parse({ title, content: sampleContent(), message: "" });
export const parsedEquipment = () => ({ equipment: equipmentInput.parse(sampleEquipment()) });

export interface Brewing {
  readonly recipeId: string;
  readonly equipmentId: string;
  readonly sharedBrewId: string;
  readonly brewId: string;
}

/** A recipe, a kettle of `brewer`, a shared brew and the brewer's sheet in it. */
export async function newBrewing(organiser: Member, brewer: Member): Promise<Brewing> {
  const { id: recipeId } = await createRecipe(organiser, parsedRecipe());
  const { id: equipmentId } = await createEquipment(brewer, parsedEquipment());
  const window = { from: "2026-03-14", to: "2026-03-28" };
  const shared = { recipeId, rev: 1, title: "Spring brew", window, rules: AS_WRITTEN };
  const { id: sharedBrewId } = await createSharedBrew(organiser, shared);
  const { id: brewId } = await planBrew(brewer, brewOf({ recipeId, equipmentId, sharedBrewId }));
  return { recipeId, equipmentId, sharedBrewId, brewId };
}

/** An order to brew the sample recipe; `change` is what a form would send instead. */
export function brewOf(
  { recipeId, equipmentId, sharedBrewId }: Pick<Brewing, "recipeId" | "equipmentId"> & { sharedBrewId: string | null },
  change: object = {},
): NewBrew {
  const ids = { recipeId, equipmentId, sharedBrewId, rev: 1 };
  return newBrew.parse({ ...ids, recipe: { ...sampleRecipe(), ...change }, ambient: sampleAmbient() });
}
