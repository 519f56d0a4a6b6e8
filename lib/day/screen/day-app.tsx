import { useEffect, useMemo, useSyncExternalStore, type ReactElement } from "react";
import { inServerTime } from "@/lib/model/log/log-entry";
import { planOf } from "@/lib/model/brew-plan";
import { dayPlan } from "../plan/day-plan";
import type { DayDatabase } from "../store/database";
import type { DaySession } from "../sync/day-session";
import { DayContext, type Day } from "./day-context";
import { DayScreen } from "./day-screen";
import { DAY_WORDS } from "./day-words";
import { NothingKept } from "./nothing-kept";
import { useNow } from "./use-now";

/** The brew day of one brew on this device. */
export function DayApp({
  session,
  database,
}: {
  readonly session: DaySession;
  readonly database: DayDatabase;
}): ReactElement {
  const state = useSyncExternalStore(session.subscribe, session.snapshot);
  const deviceNow = useNow();
  const { sheet, log, clockAheadMs } = state;
  const now = inServerTime(clockAheadMs, deviceNow);
  const brew = sheet?.brew ?? null;
  const plan = useMemo(() => (brew === null ? null : planOf(brew)), [brew]);
  const theme = sheet?.preferences.theme;

  useEffect(() => {
    if (theme !== undefined) document.documentElement.dataset["theme"] = theme;
  }, [theme]);

  useEffect(() => {
    if (brew !== null) document.title = `Brew day: ${brew.title} · Gylebook`;
  }, [brew]);

  if (sheet === null || brew === null) {
    return <NothingKept words={DAY_WORDS} connection={state.connection} onRetry={() => void session.refresh()} />;
  }
  const day: Day = {
    space: sheet.space.slug,
    brew,
    log,
    day: dayPlan(brew, log, now),
    plan,
    preferences: sheet.preferences,
    now,
    mayWrite: brew.mayWrite && !brew.isDropped && brew.state !== "closed",
    retryRefused: () => void session.retry(),
    refused: state.waiting.filter(({ refusal }) => refusal !== null),
    keep: (contents, occurredAt) => session.keep(contents, occurredAt),
    write: (contents, occurredAt) => session.write(contents, occurredAt),
  };
  return (
    <DayContext value={day}>
      <DayScreen state={state} session={session} database={database} />
    </DayContext>
  );
}
