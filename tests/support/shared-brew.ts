import { joining, type Joining } from "@/lib/model/participation";
import { planChange, type PlanChange } from "@/lib/model/shared-brew";
import { AS_WRITTEN } from "@/lib/model/shared-brew-rules";
import { createEquipment } from "@/lib/server/equipment/writes";
import { createRecipe } from "@/lib/server/recipes/writes";
import type { Member } from "@/lib/server/session";
import { createSharedBrew } from "@/lib/server/shared-brews/writes";
import { parsedEquipment, parsedRecipe } from "./brewing";

export interface CalledBrew {
  readonly recipeId: string;
  readonly sharedBrewId: string;
}

/** A shared brew of the sample recipe with a window of two weeks, and nobody in it. */
export async function callSharedBrew(organiser: Member): Promise<CalledBrew> {
  const { id: recipeId } = await createRecipe(organiser, parsedRecipe());
  const window = { from: "2027-03-14", to: "2027-03-28" };
  const call = { recipeId, rev: 1, title: "Spring brew", window, rules: AS_WRITTEN };
  return { recipeId, sharedBrewId: (await createSharedBrew(organiser, call)).id };
}

export async function newKettle(owner: Member): Promise<string> {
  return (await createEquipment(owner, parsedEquipment())).id;
}

/** What a form would send to join; `change` is what it sends instead. */
export function joiningOf(sharedBrewId: string, equipmentId: string, change: object = {}): Joining {
  const plain = { sharedBrewId, equipmentId, planVersion: 1, brewDay: null, water: null, yeast: "" };
  return joining.parse({ ...plain, ...change });
}

/** A change of the plan's window, against version 1. */
export function planChangeOf(id: string, change: object = {}): PlanChange {
  const window = { from: "2027-04-03", to: "2027-04-18" };
  const plain = { id, baseVersion: 1, rev: 1, state: "open", window, rules: AS_WRITTEN, note: "The malt comes later" };
  return planChange.parse({ ...plain, ...change });
}
