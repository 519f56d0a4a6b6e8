import type { BrewSummary } from "@/lib/model/brew";
import type { EquipmentProfile } from "@/lib/model/equipment";
import type { RecipeSummary } from "@/lib/model/recipe-content";
import { roleMay, type Role } from "@/lib/model/roles";
import type { SharedBrewSummary } from "@/lib/model/shared-brew";

/** The one thing that the home page of a space puts first. */
export interface NextStep {
  readonly why: string;
  readonly label: string;
  readonly href: string;
}

export interface SpaceState {
  readonly member: { readonly userId: string; readonly role: Role; readonly spaceSlug: string };
  readonly recipes: readonly RecipeSummary[];
  readonly kettles: readonly EquipmentProfile[];
  readonly brews: readonly BrewSummary[];
  readonly sharedBrews: readonly SharedBrewSummary[];
}

/** What the member does next: first what is hot, then what others wait for, then what is still missing. */
export function nextStep(state: SpaceState): NextStep | null {
  return ownBrewDay(state) ?? sharedBrewToJoin(state) ?? whatIsMissing(state) ?? whatFerments(state);
}

function ownBrewDay({ member, brews }: SpaceState): NextStep | null {
  const own = brews.filter((brew) => brew.brewerId === member.userId);
  const hot = own.find((brew) => brew.state === "on the kettle");
  if (hot !== undefined) {
    return { why: `${hot.title} is on the kettle.`, label: "Go on with the run sheet", href: brewHref(member, hot) };
  }
  const planned = own.find((brew) => brew.state === "planned");
  if (planned === undefined) return null;
  const why = `${planned.title} is planned on ${planned.equipmentName}.`;
  return { why, label: "Open the run sheet", href: brewHref(member, planned) };
}

function sharedBrewToJoin({ member, brews, sharedBrews, kettles }: SpaceState): NextStep | null {
  if (!roleMay(member.role, "brew")) return null;
  const joined = new Set(brews.filter((brew) => brew.brewerId === member.userId).map((brew) => brew.sharedBrewId));
  const open = sharedBrews.find(
    ({ id, state, participantIds }) => state === "open" && !joined.has(id) && !participantIds.includes(member.userId),
  );
  if (open === undefined) return null;
  const kettle = kettles.find(({ ownerId }) => ownerId === member.userId);
  if (kettle === undefined) {
    const why = `${open.title} is open to join. To take part, say what you brew on.`;
    return { why, label: "Describe your kettle", href: `/s/${member.spaceSlug}/equipment/new` };
  }
  const href = `/s/${member.spaceSlug}/shared-brews/${open.id}/kettles/${kettle.id}`;
  return { why: `${open.title} is open to join.`, label: `See it on ${kettle.equipment.name}`, href };
}

function whatIsMissing({ member, recipes, kettles, sharedBrews }: SpaceState): NextStep | null {
  const home = `/s/${member.spaceSlug}`;
  if (roleMay(member.role, "keep equipment") && !kettles.some(({ ownerId }) => ownerId === member.userId)) {
    const why = "Every number depends on what you brew on.";
    return { why, label: "Describe your kettle", href: `${home}/equipment/new` };
  }
  if (roleMay(member.role, "write recipes") && recipes.length === 0) {
    return { why: "There is no recipe here yet.", label: "Write the first recipe", href: `${home}/recipes/new` };
  }
  const [shared] = sharedBrews;
  if (roleMay(member.role, "brew") || shared === undefined) return null;
  const href = `${home}/shared-brews/${shared.id}`;
  return { why: `${shared.title} is brewed together.`, label: "See how it goes", href };
}

function whatFerments({ member, brews }: SpaceState): NextStep | null {
  const brew = brews.find((each) => each.brewerId === member.userId && each.state === "in the fermenter");
  if (brew === undefined) return null;
  return { why: `${brew.title} is in the fermenter.`, label: "Enter a reading", href: brewHref(member, brew) };
}

function brewHref({ spaceSlug }: SpaceState["member"], { id }: BrewSummary): string {
  return `/s/${spaceSlug}/brews/${id}`;
}
