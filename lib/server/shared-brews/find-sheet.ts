import "server-only";
import { brew, intervals, type Ambient, type Equipment, type Ledger, type Recipe } from "@/lib/calc/ledger";
import type { Adapted } from "@/lib/model/adaptation";
import type { Prediction } from "@/lib/model/brew";
import type { EquipmentProfile } from "@/lib/model/equipment";
import type { RecipeRevision } from "@/lib/model/recipe-content";
import { ruleResults, type RuleResult } from "@/lib/model/rule-results";
import type { Participant } from "@/lib/model/shared-brew";
import { findBrew } from "../brews/reads";
import type { Member } from "../session";
import { findSharedBrewPlan, type SharedBrewPlan } from "./reads";
import { ledgerOf, readSetting } from "./sheets";

/** One kettle in a shared brew, whether it takes part or only might. */
export interface KettleSheet {
  readonly planned: SharedBrewPlan;
  readonly revision: RecipeRevision;
  readonly profile: EquipmentProfile;
  readonly participant: Participant | null;
  readonly adapted: Adapted;
  /** What is brewed: of a planned brew its own; null where no grist reaches the strength. */
  readonly brewed: BrewedHere | null;
}

export interface BrewedHere {
  readonly recipe: Recipe;
  readonly ledger: Ledger;
  readonly results: readonly RuleResult[];
  readonly dayMinutes: Prediction | null;
}

export async function findSheet(
  member: Member,
  { sharedBrewId, equipmentId }: { readonly sharedBrewId: string; readonly equipmentId: string },
): Promise<KettleSheet | null> {
  const planned = await findSharedBrewPlan(member, sharedBrewId);
  const setting = planned === null ? null : await readSetting(member, planned);
  if (planned === null || setting === null) return null;
  const { revision, written } = setting;
  const profile = setting.kettles.find(({ id }) => id === equipmentId);
  const participant = planned.participants.find((part) => part.equipmentId === equipmentId) ?? null;
  const adapted = setting.adapt(equipmentId, participant ?? { water: null, yeast: "" });
  if (profile === undefined || adapted === null) return null;

  const brewId = participant?.brew?.id ?? null;
  const own = brewId === null ? null : await findBrew(member, brewId);
  const recipe = own?.recipe ?? adapted.chosen?.recipe ?? adapted.outcome.recipe;
  const day = {
    equipment: own?.equipment ?? profile.equipment,
    ambient: own?.ambient ?? revision.content.writtenOn.ambient,
  };
  const ledger = own === null ? ledgerOf(adapted) : brewedLedger({ recipe: own.recipe, ...day });
  const brewed: BrewedHere | null =
    recipe === null || ledger === null
      ? null
      : {
          recipe,
          ledger,
          results: ruleResults({ rules: planned.plan.rules, written: written.ledger, here: ledger }),
          dayMinutes: own?.predicted["day.time"] ?? dayMinutes({ recipe, ...day }, ledger),
        };
  return { planned, revision, profile, participant, adapted, brewed };
}

interface Day {
  readonly recipe: Recipe;
  readonly equipment: Equipment;
  readonly ambient: Ambient;
}

function brewedLedger(day: Day): Ledger | null {
  const outcome = brew(day);
  return outcome.ok ? outcome.ledger : null;
}

/** How long the brew day takes, with its 80 % interval. */
function dayMinutes(day: Day, { quantities }: Ledger): Prediction | null {
  const value = quantities["day.time"];
  const interval = intervals(day)["day.time"];
  return value === null || interval === undefined ? null : { value, ...interval };
}
