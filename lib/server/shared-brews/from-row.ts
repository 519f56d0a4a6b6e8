import "server-only";
import { BREW_STATES } from "@/lib/model/brew";
import { dayOf, type DayWindow } from "@/lib/model/plain-day";
import { waterSource } from "@/lib/model/recipe-rows";
import {
  SHARED_BREW_STATES,
  type Participant,
  type PlanVersion,
  type SharedBrewSummary,
} from "@/lib/model/shared-brew";
import { sharedBrewRules } from "@/lib/model/shared-brew-rules";
import { storedWord } from "../stored-word";

type NameOf = (userId: string) => string;

export const PLAN_COLUMNS = {
  version: true,
  recipeId: true,
  recipeRev: true,
  state: true,
  windowFrom: true,
  windowTo: true,
  rules: true,
  note: true,
  madeBy: true,
  madeAt: true,
} as const;

interface PlanRow {
  readonly version: number;
  readonly recipeId: string;
  readonly recipeRev: number;
  readonly state: string;
  readonly windowFrom: Date | null;
  readonly windowTo: Date | null;
  readonly rules: unknown;
  readonly note: string;
  readonly madeBy: string;
  readonly madeAt: Date;
}

export function toPlanVersion(row: PlanRow, nameOf: NameOf): PlanVersion {
  const { version, recipeId, recipeRev, note, madeAt } = row;
  return {
    version,
    recipeId,
    recipeRev,
    state: storedWord(SHARED_BREW_STATES, row.state),
    window: toWindow(row),
    rules: sharedBrewRules.parse(row.rules),
    note,
    madeByName: nameOf(row.madeBy),
    madeAt,
  };
}

function toWindow({ windowFrom, windowTo }: Pick<PlanRow, "windowFrom" | "windowTo">): DayWindow | null {
  return windowFrom === null || windowTo === null ? null : { from: dayOf(windowFrom), to: dayOf(windowTo) };
}

export const SHARED_COLUMNS = {
  id: true,
  title: true,
  recipeId: true,
  recipeRev: true,
  state: true,
  plannedAt: true,
  lockVersion: true,
  plans: { select: { windowFrom: true, windowTo: true }, orderBy: { version: "desc" }, take: 1 },
  participants: { select: { userId: true }, where: { leftAt: null }, orderBy: { joinedAt: "asc" } },
} as const;

interface SharedRow {
  readonly id: string;
  readonly title: string;
  readonly recipeId: string;
  readonly recipeRev: number;
  readonly state: string;
  readonly plannedAt: Date | null;
  readonly lockVersion: number;
  readonly plans: readonly Pick<PlanRow, "windowFrom" | "windowTo">[];
  readonly participants: readonly { readonly userId: string }[];
}

export function toSharedBrewSummary(row: SharedRow): SharedBrewSummary {
  const { id, title, recipeId, recipeRev, plannedAt, lockVersion, plans, participants } = row;
  const [head] = plans;
  return {
    id,
    title,
    recipeId,
    recipeRev,
    state: storedWord(SHARED_BREW_STATES, row.state),
    plannedAt,
    window: head === undefined ? null : toWindow(head),
    version: lockVersion,
    participantIds: [...new Set(participants.map(({ userId }) => userId))],
  };
}

export const PARTICIPANT_COLUMNS = {
  userId: true,
  equipmentId: true,
  brewAt: true,
  zone: true,
  water: true,
  yeast: true,
  seenVersion: true,
  lockVersion: true,
  equipment: { select: { name: true } },
} as const;

interface ParticipantRow {
  readonly userId: string;
  readonly equipmentId: string;
  readonly brewAt: Date | null;
  readonly zone: string | null;
  readonly water: unknown;
  readonly yeast: string;
  readonly seenVersion: number;
  readonly lockVersion: number;
  readonly equipment: { readonly name: string };
}

interface PlannedRow {
  readonly id: string;
  readonly state: string;
  readonly planVersion: number | null;
}

export function toParticipant(row: ParticipantRow, brew: PlannedRow | undefined, nameOf: NameOf): Participant {
  const { userId, equipmentId, brewAt, zone, water, yeast, seenVersion, lockVersion, equipment } = row;
  return {
    userId,
    userName: nameOf(userId),
    equipmentId,
    kettleName: equipment.name,
    brewAt,
    zone,
    water: water === null ? null : waterSource.parse(water),
    yeast,
    seenVersion,
    lockVersion,
    brew:
      brew === undefined
        ? null
        : { id: brew.id, state: storedWord(BREW_STATES, brew.state), planVersion: brew.planVersion ?? 1 },
  };
}
