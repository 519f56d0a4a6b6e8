import type { EquipmentProfile } from "@/lib/model/equipment";
import type { RecipeContent } from "@/lib/model/recipe-content";
import type { KettleChoice } from "./editor-state";

/** The kettles of a space to compute on: the reader's own before those of others. */
export function kettleChoices(kettles: readonly EquipmentProfile[], userId: string): readonly KettleChoice[] {
  const own = kettles.filter(({ ownerId }) => ownerId === userId);
  const others = kettles.filter(({ ownerId }) => ownerId !== userId);
  return [
    ...own.map(({ id, equipment }) => ({ id, label: equipment.name, equipment })),
    ...others.map(({ id, equipment, ownerName }) => ({ id, label: `${equipment.name}, ${ownerName}`, equipment })),
  ];
}

/** The kettle of a recipe as it was when the recipe was written; profiles change, the recipe does not. */
export function writtenKettle({ writtenOn }: RecipeContent): KettleChoice {
  return { id: "as-written", label: `${writtenOn.name}, as written`, equipment: writtenOn.equipment };
}
