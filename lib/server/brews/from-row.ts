import "server-only";
import { z } from "zod";
import type { Step } from "@/lib/calc/runsheet";
import { ambientInput } from "@/lib/model/ambient";
import { BREW_STATES, type Brew, type BrewSummary, type Predictions } from "@/lib/model/brew";
import { brewReadings } from "@/lib/model/log/brew-readings";
import { projectLog } from "@/lib/model/log/project-log";
import { equipmentInput } from "@/lib/model/equipment";
import { recipeInput } from "@/lib/model/recipe-content";
import type { Member } from "../session";
import { toEntries } from "../log/entries";
import type { EventRow } from "../log/event-row";
import { mayWriteBrew } from "./may-write";
import { storedWord } from "../stored-word";

/**
 * What lib/calc made when the brew was planned. Nobody else writes these columns, so the shape of a step is not spelt
 * out a second time.
 */
export const plannedColumns = z.object({
  runSheet: z.custom<readonly Step[]>(Array.isArray),
  predicted: z.custom<Predictions>((value) => typeof value === "object" && value !== null),
});

export const SUMMARY_COLUMNS = {
  id: true,
  title: true,
  recipeId: true,
  recipeRev: true,
  sharedBrewId: true,
  brewerUserId: true,
  equipmentSnapshot: true,
  state: true,
  startedAt: true,
} as const;

export const BREW_COLUMNS = {
  ...SUMMARY_COLUMNS,
  recipe: true,
  ambient: true,
  runSheet: true,
  predicted: true,
  calcVersion: true,
  lockVersion: true,
  droppedAt: true,
  droppedBy: true,
  droppedWhy: true,
  collaborators: { select: { userId: true } },
} as const;

interface SummaryRow {
  readonly id: string;
  readonly title: string;
  readonly recipeId: string;
  readonly recipeRev: number;
  readonly sharedBrewId: string | null;
  readonly brewerUserId: string;
  readonly equipmentSnapshot: unknown;
  readonly state: string;
  readonly startedAt: Date | null;
}

type NameOf = (userId: string) => string;

export function toSummary(row: SummaryRow, nameOf: NameOf): BrewSummary {
  return {
    id: row.id,
    title: row.title,
    recipeId: row.recipeId,
    recipeRev: row.recipeRev,
    sharedBrewId: row.sharedBrewId,
    brewerId: row.brewerUserId,
    brewerName: nameOf(row.brewerUserId),
    equipmentName: equipmentInput.parse(row.equipmentSnapshot).name,
    state: storedWord(BREW_STATES, row.state),
    startedAt: row.startedAt,
  };
}

interface BrewRow extends SummaryRow {
  readonly recipe: unknown;
  readonly ambient: unknown;
  readonly runSheet: unknown;
  readonly predicted: unknown;
  readonly calcVersion: string;
  readonly lockVersion: number;
  readonly droppedAt: Date | null;
  readonly droppedBy: string | null;
  readonly droppedWhy: string | null;
  readonly collaborators: readonly { readonly userId: string }[];
  readonly events: readonly EventRow[];
  readonly leftOut: number;
}

export function toBrew(member: Member, row: BrewRow, nameOf: NameOf): Brew {
  const { runSheet, predicted } = plannedColumns.parse(row);
  const entries = toEntries(row.events, nameOf);
  const log = projectLog(entries);
  return {
    ...toSummary(row, nameOf),
    recipe: recipeInput.parse(row.recipe),
    equipment: equipmentInput.parse(row.equipmentSnapshot),
    ambient: ambientInput.parse(row.ambient),
    runSheet,
    predicted,
    calcVersion: row.calcVersion,
    lockVersion: row.lockVersion,
    mayWrite: row.droppedAt === null && mayWriteBrew(member, row),
    dropped: toDropped(row, nameOf),
    entries,
    leftOut: row.leftOut,
    log,
    readings: brewReadings(row.id, log.readings),
  };
}

function toDropped({ droppedAt, droppedBy, droppedWhy }: BrewRow, nameOf: NameOf): Brew["dropped"] {
  if (droppedAt === null || droppedBy === null || droppedWhy === null) return null;
  return { at: droppedAt, byName: nameOf(droppedBy), why: droppedWhy };
}

/** Everybody whose name a brew shows. */
export function peopleOf(rows: readonly BrewRow[]): string[] {
  return rows.flatMap((row) => [
    row.brewerUserId,
    ...(row.droppedBy === null ? [] : [row.droppedBy]),
    ...row.events.map((event) => event.actorId),
  ]);
}
