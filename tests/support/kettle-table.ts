import type { Equipment } from "@/lib/calc/ledger";
import { equipmentInput } from "@/lib/model/equipment";
import type { KettleEntry } from "@/lib/model/kettle-entry";
import { recipeContent } from "@/lib/model/recipe-content";
import { sampleContent, sampleEquipment } from "./sample-recipe";

export const tableContent = recipeContent.parse(sampleContent());

/** The sample kettle, on which the sample recipe fits, and one whose basket is too small for its grist. */
export const roomyKettle: Equipment = equipmentInput.parse(sampleEquipment());
export const smallKettle: Equipment = equipmentInput.parse({
  ...sampleEquipment(),
  mash: { ...sampleEquipment().mash, grainLimit: 4 },
});

export function entryOf(key: string, change: Partial<KettleEntry> = {}): KettleEntry {
  return { key, ownerId: `owner of ${key}`, ownerName: "Ada", kettleName: key, mayChoose: true, kept: null, ...change };
}
