import { z } from "zod";
import type { Brew } from "./brew";
import { revisionNumber } from "./measured";
import { recordId, written } from "./written";

export const newSharedBrew = z.strictObject({
  recipeId: recordId,
  rev: revisionNumber,
  title: written("Title", 160),
  plannedAt: z.coerce.date({ error: "Planned day is not a date" }).nullable(),
});
export type NewSharedBrew = z.output<typeof newSharedBrew>;

export const SHARED_BREW_STATES = ["planned", "open", "closed", "cancelled"] as const;

/** One recipe brewed by many. */
export interface SharedBrewSummary {
  readonly id: string;
  readonly title: string;
  readonly recipeId: string;
  readonly recipeRev: number;
  readonly state: (typeof SHARED_BREW_STATES)[number];
  readonly plannedAt: Date | null;
}

export interface SharedBrew extends SharedBrewSummary {
  readonly brews: readonly Brew[];
}
