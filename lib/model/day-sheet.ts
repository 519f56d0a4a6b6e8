import type { Brew } from "./brew";
import type { LogEntry } from "./log/log-entry";
import type { Preferences } from "./preferences";

/** Everything that a phone needs to brew a whole day without the server. */
export interface DaySheet {
  readonly space: { readonly slug: string; readonly name: string };
  readonly me: { readonly id: string; readonly name: string };
  readonly preferences: Preferences;
  readonly brew: DayBrew;
  readonly entries: readonly LogEntry[];
  /** ISO 8601, by the server's clock, when this was read. */
  readonly readAt: string;
}

/** The plan of a brew as it is kept on a phone. Times are text, as JSON has them. */
export type DayBrew = Pick<
  Brew,
  | "id"
  | "title"
  | "brewerName"
  | "equipmentName"
  | "state"
  | "recipe"
  | "equipment"
  | "ambient"
  | "runSheet"
  | "predicted"
  | "lockVersion"
  | "mayWrite"
> & { readonly startedAt: string | null; readonly isDropped: boolean };
