import { useEffect, useMemo, useSyncExternalStore, type ReactElement } from "react";
import { inServerTime } from "@/lib/model/log/log-entry";
import { planOf, type BrewPlan } from "@/lib/model/brew-plan";
import { dayPlan } from "../plan/day-plan";
import type { DayDatabase } from "../store/database";
import type { DaySession, DayState } from "../sync/day-session";
import { DayContext, type Day } from "./day-context";
import { DayScreen } from "./day-screen";
import { DAY_WORDS } from "./day-words";
import { NothingKept } from "./nothing-kept";
import { useOfNow } from "./use-now";

/** How late and how early the day runs is said in minutes. What is counted in seconds draws itself. */
const DRAWN_EVERY_MS = 5000;

/** The brew day of one brew on this device. */
export function DayApp({
  session,
  database,
}: {
  readonly session: DaySession;
  readonly database: DayDatabase;
}): ReactElement {
  const state = useSyncExternalStore(session.subscribe, session.snapshot);
  const drawing = useOfNow((now) => Math.floor(now / DRAWN_EVERY_MS));
  const { sheet } = state;
  const brew = sheet?.brew ?? null;
  const plan = useMemo(() => (brew === null ? null : planOf(brew)), [brew]);
  const day = useMemo(() => dayOf(session, state, plan), [session, state, plan, drawing]);
  const theme = sheet?.preferences.theme;

  useEffect(() => {
    if (theme !== undefined) document.documentElement.dataset["theme"] = theme;
  }, [theme]);

  useEffect(() => {
    if (brew !== null) document.title = `Brew day: ${brew.title} · Gylebook`;
  }, [brew]);

  if (day === null) {
    return <NothingKept words={DAY_WORDS} connection={state.connection} onRetry={() => void session.refresh()} />;
  }
  return (
    <DayContext value={day}>
      <DayScreen state={state} session={session} database={database} />
    </DayContext>
  );
}

/** The day as this device knows it at this moment; null until it has read the sheet once. */
function dayOf(session: DaySession, state: DayState, plan: BrewPlan | null): Day | null {
  const { sheet, log, clockAheadMs } = state;
  if (sheet === null) return null;
  const { brew } = sheet;
  const present = (): number => inServerTime(clockAheadMs, Date.now());
  const now = present();
  return {
    space: sheet.space.slug,
    brew,
    log,
    day: dayPlan(brew, log, now),
    plan,
    preferences: sheet.preferences,
    now,
    present,
    clockAheadMs,
    mayWrite: brew.mayWrite && !brew.isDropped && brew.state !== "closed",
    retryRefused: () => void session.retry(),
    refused: state.waiting.filter(({ refusal }) => refusal !== null),
    keep: (contents, occurredAt) => session.keep(contents, occurredAt),
    write: (contents, occurredAt) => session.write(contents, occurredAt),
  };
}
