import "server-only";
import type { Ledger } from "@/lib/calc/ledger";
import { adaptWith, type AdaptationChoice, type Adapted } from "@/lib/model/adaptation";
import type { EquipmentProfile } from "@/lib/model/equipment";
import type { KeptChoice } from "@/lib/model/kettle-entry";
import type { RecipeRevision } from "@/lib/model/recipe-content";
import { recipeIntention } from "@/lib/model/recipe-intention";
import { keptOf } from "@/lib/server/adaptations/choose";
import { listAdaptations } from "@/lib/server/adaptations/reads";
import { findEquipment } from "@/lib/server/equipment/reads";
import { lotFigures } from "@/lib/server/lots/figures";
import { findRecipe, findRevision } from "@/lib/server/recipes/reads";
import type { Member } from "@/lib/server/session";
import { choiceInView, type VolumeView } from "@/lib/ui/kettles/kettle-view";

/** What is asked for: a recipe on a kettle; a shared brew has sheets of its own, under the rules of its plan. */
export interface SheetRequest {
  readonly recipeId: string;
  readonly equipmentId: string;
  readonly rev: number | null;
  readonly volume: VolumeView;
}

export interface Sheet extends Adapted {
  readonly revision: RecipeRevision;
  readonly profile: EquipmentProfile;
  /** The recipe on the kettle that it was written for. */
  readonly writtenLedger: Ledger;
  /** What this sheet is computed by. */
  readonly choice: AdaptationChoice;
  /** What its brewer chose, whether this sheet follows it or not. */
  readonly kept: KeptChoice | null;
}

/** The sheet of one kettle; null where recipe or kettle is not there, or the recipe does not brew at all. */
export async function readSheet(member: Member, request: SheetRequest): Promise<Sheet | null> {
  const { recipeId, equipmentId, rev, volume } = request;
  const [revision, profile] = await Promise.all([
    rev === null ? findRecipe(member, recipeId) : findRevision(member, recipeId, rev),
    findEquipment(member, equipmentId),
  ]);
  if (revision === null || profile === null) return null;
  const { content } = revision;
  const written = recipeIntention(content);
  if (written === null) return null;
  const adaptation = (await listAdaptations(member, { recipeId, rev: revision.rev })).get(equipmentId);
  const choice = choiceInView(adaptation?.choice ?? null, volume);
  const lots = await lotFigures(member, Object.values(choice.lots));
  const adapted = adaptWith({ content, written, equipment: profile.equipment, choice, lots });
  const kept = adaptation === undefined ? null : keptOf(adaptation);
  return { revision, profile, writtenLedger: written.ledger, choice, kept, ...adapted };
}
