import "server-only";
import type { Ledger, Recipe } from "@/lib/calc/ledger";
import { NO_CHOICE, type Adapted } from "@/lib/model/adaptation";
import type { EquipmentProfile } from "@/lib/model/equipment";
import type { LotFigures } from "@/lib/model/lot";
import type { RecipeRevision } from "@/lib/model/recipe-content";
import { recipeInput } from "@/lib/model/recipe-content";
import { recipeIntention, type WrittenIntention } from "@/lib/model/recipe-intention";
import { sheetUnderRules, type SheetTask } from "@/lib/model/sheet-under-rules";
import { listAdaptations } from "../adaptations/reads";
import { inSpace } from "../db";
import { listEquipment } from "../equipment/reads";
import { findRevision } from "../recipes/reads";
import type { Member } from "../session";
import { lotFigures } from "../lots/figures";
import { findSharedBrewPlan, type SharedBrewPlan } from "./reads";

/** One member's recipe in a shared brew. */
export interface SharedSheet {
  readonly userId: string;
  readonly userName: string;
  readonly equipmentId: string;
  readonly kettleName: string;
  readonly brewId: string | null;
  readonly recipe: Recipe;
}

/**
 * The recipes of everybody who takes part: of a brew that is planned its own, else what the plan makes of the revision
 * on the kettle. Left out is only a kettle on which no grist reaches the strength.
 */
export async function listSheets(member: Member, sharedBrewId: string): Promise<readonly SharedSheet[]> {
  const planned = await findSharedBrewPlan(member, sharedBrewId);
  if (planned === null) return [];
  const [setting, recipes] = await Promise.all([readSetting(member, planned), brewedRecipes(member, sharedBrewId)]);
  return planned.participants.flatMap((participant) => {
    const { userId, userName, equipmentId, kettleName, brew, water, yeast } = participant;
    const own = brew === null ? undefined : recipes.get(brew.id);
    const recipe = own ?? recipeOf(setting?.adapt(equipmentId, { water, yeast }) ?? null);
    if (recipe === null) return [];
    return [{ userId, userName, equipmentId, kettleName, brewId: brew?.id ?? null, recipe }];
  });
}

function recipeOf(adapted: Adapted | null): Recipe | null {
  if (adapted === null) return null;
  return adapted.chosen?.recipe ?? adapted.outcome.recipe;
}

type OwnPart = Pick<SheetTask, "water" | "yeast">;

/** What is the same for every kettle of a shared brew. */
export interface SheetSetting {
  readonly planned: SharedBrewPlan;
  readonly revision: RecipeRevision;
  readonly written: WrittenIntention;
  readonly kettles: readonly EquipmentProfile[];
  /** The recipe under the rules on one kettle; null for a kettle that is not there. */
  readonly adapt: (equipmentId: string, part: OwnPart) => Adapted | null;
}

/** null where the revision is no longer listed, or does not brew on its own kettle. */
export async function readSetting(member: Member, planned: SharedBrewPlan): Promise<SheetSetting | null> {
  const { recipeId, recipeRev: rev } = planned;
  const [revision, adaptations, kettles] = await Promise.all([
    findRevision(member, recipeId, rev),
    listAdaptations(member, { recipeId, rev }),
    listEquipment(member),
  ]);
  const written = revision === null ? null : recipeIntention(revision.content);
  if (revision === null || written === null) return null;
  const choices = [...adaptations.values()].map(({ choice }) => choice);
  const lots: ReadonlyMap<string, LotFigures> = await lotFigures(
    member,
    choices.flatMap((choice) => Object.values(choice.lots)),
  );
  const { content } = revision;
  const adapt = (equipmentId: string, part: OwnPart): Adapted | null => {
    const equipment = kettles.find(({ id }) => id === equipmentId)?.equipment;
    if (equipment === undefined) return null;
    const choice = adaptations.get(equipmentId)?.choice ?? NO_CHOICE;
    return sheetUnderRules({ content, written, rules: planned.plan.rules, equipment, choice, lots, ...part });
  };
  return { planned, revision, written, kettles, adapt };
}

/** The ledger that a sheet stands for: that of the way out taken, or of the recipe as intended. */
export function ledgerOf({ chosen, outcome }: Adapted): Ledger | null {
  return chosen?.ledger ?? outcome.ledger;
}

async function brewedRecipes({ spaceId, userId }: Member, sharedBrewId: string): Promise<ReadonlyMap<string, Recipe>> {
  const rows = await inSpace(spaceId, userId, (tx) =>
    tx.brew.findMany({ where: { spaceId, sharedBrewId, droppedAt: null }, select: { id: true, recipe: true } }),
  );
  return new Map(rows.map(({ id, recipe }) => [id, recipeInput.parse(recipe)]));
}
