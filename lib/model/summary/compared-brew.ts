import type { BrewState } from "../brew";
import type { SummaryCurve, SummaryOfBrew } from "./brew-summary";

/** One brew as it stands among others. */
export interface BrewAmongOthers {
  readonly id: string;
  readonly title: string;
  readonly recipeId: string;
  readonly recipeRev: number;
  readonly sharedBrewId: string | null;
  readonly sharedBrewTitle: string | null;
  readonly brewerId: string;
  readonly brewerName: string;
  readonly equipmentId: string;
  readonly equipmentName: string;
  /** The vessel that it was mashed in. */
  readonly equipmentKind: string;
  readonly state: BrewState;
  readonly startedAt: Date | null;
  /** null while it is being made: what is not of the present log is not shown. */
  readonly summary: SummaryOfBrew | null;
  /** Only where asked for. */
  readonly curves: readonly SummaryCurve[];
}
