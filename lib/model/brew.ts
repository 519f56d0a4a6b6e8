import type { Ambient, Equipment, Interval, QuantityId, Recipe } from "@/lib/calc/ledger";
import type { Step } from "@/lib/calc/runsheet";
import type { LogEntry } from "./log/log-entry";
import type { BrewLog } from "./log/project-log";
import type { Reading } from "./reading";

/** Where a batch is, in the order in which it gets there. */
export const BREW_STATES = ["planned", "on the kettle", "in the fermenter", "in package", "closed"] as const;
export type BrewState = (typeof BREW_STATES)[number];

/** A predicted number with its 80 % interval. */
export interface Prediction extends Interval {
  readonly value: number;
}
export type Predictions = Readonly<Partial<Record<QuantityId, Prediction>>>;

/** One batch in a list. */
export interface BrewSummary {
  readonly id: string;
  readonly title: string;
  readonly recipeId: string;
  readonly recipeRev: number;
  readonly sharedBrewId: string | null;
  readonly brewerId: string;
  readonly brewerName: string;
  readonly equipmentName: string;
  readonly state: BrewState;
  readonly startedAt: Date | null;
}

/** One batch with all that was planned for it and all that was measured. */
export interface Brew extends BrewSummary {
  readonly recipe: Recipe;
  readonly equipment: Equipment;
  readonly ambient: Ambient;
  readonly runSheet: readonly Step[];
  readonly predicted: Predictions;
  readonly calcVersion: string;
  readonly lockVersion: number;
  readonly mayWrite: boolean;
  /** By whom and why it will not be brewed; null for a brew that counts. */
  readonly dropped: { readonly at: Date; readonly byName: string; readonly why: string } | null;
  /** Everything that was logged, in no order. */
  readonly entries: readonly LogEntry[];
  /** How many readings of sensors the log has besides: of very many, every so-manyth is read. */
  readonly leftOut: number;
  /** What it comes to. */
  readonly log: BrewLog;
  /** The readings of the ledger's numbers, each value that was ever given. */
  readonly readings: readonly Reading[];
}
