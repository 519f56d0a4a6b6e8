import "server-only";
import { z } from "zod";
import type { Recipe } from "@/lib/calc/ledger";
import type { Predictions } from "@/lib/model/brew";
import type { FermentingBrew } from "@/lib/model/cellar/fermentation";
import { brewReadings } from "@/lib/model/log/brew-readings";
import { projectLog } from "@/lib/model/log/project-log";
import { recipeInput } from "@/lib/model/recipe-content";
import { toEntries } from "../log/entries";
import { EVENT_COLUMNS, type EventRow } from "../log/event-row";

/** What the cellar needs of a brew, without the names of people. */
export const CELLAR_COLUMNS = {
  id: true,
  title: true,
  brewerUserId: true,
  startedAt: true,
  recipe: true,
  predicted: true,
  equipmentSnapshot: true,
  collaborators: { select: { userId: true } },
  events: { select: EVENT_COLUMNS },
} as const;

interface CellarRow {
  readonly id: string;
  readonly startedAt: Date | null;
  readonly recipe: unknown;
  readonly predicted: unknown;
  readonly events: readonly EventRow[];
}

// As lib/calc made them when the brew was planned.
const predictions = z.custom<Predictions>((value) => typeof value === "object" && value !== null);

/** A brew with its recipe, as far as its fermentation depends on them. */
export function toFermenting(row: CellarRow): FermentingBrew & { readonly recipe: Recipe } {
  const log = projectLog(toEntries(row.events, () => ""));
  return {
    startedAt: row.startedAt,
    recipe: recipeInput.parse(row.recipe),
    predicted: predictions.parse(row.predicted),
    log,
    readings: brewReadings(row.id, log.readings),
  };
}
