import "server-only";
import type { AdaptOutcome } from "@/lib/calc/adapt";
import type { Ledger } from "@/lib/calc/ledger";
import type { EquipmentProfile } from "@/lib/model/equipment";
import type { RecipeRevision } from "@/lib/model/recipe-content";
import { adaptTo, recipeIntention, type VolumeHeld } from "@/lib/model/recipe-intention";
import { findEquipment } from "@/lib/server/equipment/reads";
import { findRecipe, findRevision } from "@/lib/server/recipes/reads";
import type { Member } from "@/lib/server/session";
import { listSharedBrews } from "@/lib/server/shared-brews/reads";

/** What is asked for: a recipe on a kettle, maybe in a shared brew, which settles the revision. */
export interface SheetRequest {
  readonly recipeId: string;
  readonly equipmentId: string;
  readonly rev: number | null;
  readonly volume: VolumeHeld;
  readonly sharedBrewId: string | null;
}

export interface Sheet {
  readonly revision: RecipeRevision;
  readonly profile: EquipmentProfile;
  readonly sharedBrew: { readonly id: string; readonly title: string } | null;
  /** The recipe on the kettle that it was written for. */
  readonly writtenLedger: Ledger;
  readonly outcome: AdaptOutcome;
}

/** The sheet of one kettle; null where recipe, kettle or shared brew is not there, or the recipe does not brew at all. */
export async function readSheet(member: Member, request: SheetRequest): Promise<Sheet | null> {
  const { recipeId, equipmentId, sharedBrewId, volume } = request;
  const shared = sharedBrewId === null ? null : (await listSharedBrews(member)).find(({ id }) => id === sharedBrewId);
  if (shared === undefined || (shared !== null && shared.recipeId !== recipeId)) return null;
  const rev = shared?.recipeRev ?? request.rev;
  const [revision, profile] = await Promise.all([
    rev === null ? findRecipe(member, recipeId) : findRevision(member, recipeId, rev),
    findEquipment(member, equipmentId),
  ]);
  if (revision === null || profile === null) return null;
  const { content } = revision;
  const written = recipeIntention(content);
  if (written === null) return null;
  const { intention, ledger: writtenLedger } = written;
  const outcome = adaptTo({ content, intention, equipment: profile.equipment, volume });
  return { revision, profile, sharedBrew: shared, writtenLedger, outcome };
}
