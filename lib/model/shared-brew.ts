import { z } from "zod";
import type { Ions } from "@/lib/calc/water";
import type { Brew, BrewState } from "./brew";
import { counted, revisionNumber } from "./measured";
import { dayWindow, type DayWindow } from "./plain-day";
import { sharedBrewRules, type SharedBrewRules } from "./shared-brew-rules";
import { oneOf, recordId, written } from "./written";

export const SHARED_BREW_STATES = ["planned", "open", "closed", "cancelled"] as const;
export type SharedBrewState = (typeof SHARED_BREW_STATES)[number];

const planVersion = counted("Plan version", { min: 1, max: 1_000_000 });

export const newSharedBrew = z.strictObject({
  recipeId: recordId,
  rev: revisionNumber,
  title: written("Title", 160),
  window: dayWindow.nullable(),
  rules: sharedBrewRules,
});
export type NewSharedBrew = z.output<typeof newSharedBrew>;

/** A change of the plan, which says why. */
export const planChange = z.strictObject({
  id: recordId,
  baseVersion: planVersion,
  rev: revisionNumber,
  state: oneOf("State", SHARED_BREW_STATES),
  window: dayWindow.nullable(),
  rules: sharedBrewRules,
  note: written("Why it changes", 500),
});
export type PlanChange = z.output<typeof planChange>;

export const planSeen = z.strictObject({ id: recordId, version: planVersion });
export type PlanSeen = z.output<typeof planSeen>;

/** How a change of the plan ended. */
export type PlanOutcome =
  | { readonly ok: true; readonly version: number }
  | { readonly ok: false; readonly reason: "stale"; readonly version: number }
  | { readonly ok: false; readonly reason: "unchanged" };

/** What a plan says, in any of its versions. */
export interface Plan {
  readonly recipeRev: number;
  readonly state: SharedBrewState;
  readonly window: DayWindow | null;
  readonly rules: SharedBrewRules;
}

export interface PlanVersion extends Plan {
  readonly version: number;
  readonly recipeId: string;
  readonly note: string;
  readonly madeByName: string;
  readonly madeAt: Date;
}

/** One recipe brewed by many. */
export interface SharedBrewSummary {
  readonly id: string;
  readonly title: string;
  readonly recipeId: string;
  readonly recipeRev: number;
  readonly state: SharedBrewState;
  /** The first day of the window. */
  readonly plannedAt: Date | null;
  readonly window: DayWindow | null;
  /** Of the plan. */
  readonly version: number;
  readonly participantIds: readonly string[];
}

/** A member who joined with a kettle. */
export interface Participant {
  readonly userId: string;
  readonly userName: string;
  readonly equipmentId: string;
  readonly kettleName: string;
  readonly brewAt: Date | null;
  readonly zone: string | null;
  readonly water: Ions | null;
  readonly yeast: string;
  readonly seenVersion: number;
  readonly lockVersion: number;
  /** What was planned on this kettle, and under which version of the plan. */
  readonly brew: { readonly id: string; readonly state: BrewState; readonly planVersion: number } | null;
}

export interface SharedBrew extends SharedBrewSummary {
  readonly plan: PlanVersion;
  readonly participants: readonly Participant[];
  readonly brews: readonly Brew[];
}

/** Whether members may still join, and plan a brew in it. */
export function isOpen(state: SharedBrewState): boolean {
  return state === "planned" || state === "open";
}
