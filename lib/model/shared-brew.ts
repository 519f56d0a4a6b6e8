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

/** One recipe brewed by many. */
export interface SharedBrewSummary {
  readonly id: string;
  readonly title: string;
  readonly recipeId: string;
  readonly recipeRev: number;
  readonly state: "planned" | "open" | "closed" | "cancelled";
  readonly plannedAt: Date | null;
}

export interface SharedBrew extends SharedBrewSummary {
  readonly brews: readonly Brew[];
}
