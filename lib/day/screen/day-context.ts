import { createContext, useContext } from "react";
import { inServerTime } from "@/lib/model/log/log-entry";
import type { EventContent } from "@/lib/model/log/log-event";
import type { DayBrew } from "@/lib/model/day-sheet";
import type { BrewLog } from "@/lib/model/log/project-log";
import type { BrewPlan } from "@/lib/model/brew-plan";
import type { Preferences } from "@/lib/model/preferences";
import type { DayPlan } from "../plan/day-plan";
import type { Waiting } from "../store/queue";
import { useOfNow } from "./use-now";

/** What every part of the brew-day screen works with. */
export interface Day {
  readonly space: string;
  readonly brew: DayBrew;
  readonly log: BrewLog;
  readonly day: DayPlan;
  /** null where today's arithmetic refuses what an older one took. */
  readonly plan: BrewPlan | null;
  readonly preferences: Preferences;
  /** When the day was drawn, some seconds ago at most: ms since 1970, by the server's clock where this device's is clearly wrong. */
  readonly now: number;
  /** The moment itself, by the same clock. */
  readonly present: () => number;
  /** How far the server's clock is ahead of this device's, ms; null until it has been compared. */
  readonly clockAheadMs: number | null;
  readonly mayWrite: boolean;
  /** Entries of this device that the server has refused; they stay here. */
  readonly refused: readonly Waiting[];
  readonly retryRefused: () => void;
  /** Keeps events on this device; fulfilled when they are on its disk. */
  readonly keep: (contents: readonly EventContent[], occurredAt?: number) => Promise<void>;
  /** The same, fulfilled when the screen has them too. */
  readonly write: (contents: readonly EventContent[], occurredAt?: number) => Promise<void>;
}

export const DayContext = createContext<Day | null>(null);

export function useDay(): Day {
  const day = useContext(DayContext);
  if (day === null) throw new Error("outside of a brew day");
  return day;
}

/** What depends on the time, looked at each second: ms since 1970, by the clock of the day. */
export function useOfDayTime<T extends string | number | boolean>(answer: (now: number) => T): T {
  const { clockAheadMs } = useDay();
  return useOfNow((now) => answer(inServerTime(clockAheadMs, now)));
}
