import { useCallback, useMemo, useRef, type ReactElement } from "react";
import { openAlarms, type Alarm } from "../alarm/due-alarms";
import { useAlarms } from "../alarm/use-alarms";
import type { DayDatabase } from "../store/database";
import type { DaySession, DayState } from "../sync/day-session";
import { AlarmList } from "./alarm-list";
import { useDay, useOfDayTime } from "./day-context";
import { DayChart } from "./day-chart";
import { DayHeading } from "./day-heading";
import { DayLog } from "./day-log";
import { DeviceHelp } from "./device-help";
import { EntryBar, type Entry, type OnEnter } from "./entry-bar";
import { EntryDialog } from "./entry-dialog";
import { NowPanel } from "./now-panel";
import { RestOfDayLine } from "./rest-of-day-line";
import { StatusLine } from "./status-line";
import { useDrawn } from "./use-drawn";
import { useMoves } from "./use-moves";
import { WholeDay } from "./whole-day";

interface DayScreenProps {
  readonly state: DayState;
  readonly session: DaySession;
  readonly database: DayDatabase;
}

/** What now, what next, what rings, what is left of the day, and what was logged: in this order, on one page. */
export function DayScreen({ state, session, database }: DayScreenProps): ReactElement {
  const { mayWrite } = useDay();
  const alarms = useOpenAlarms();
  const sounding = useAlarms(alarms);
  const moves = useMoves();
  const isDrawn = useDrawn();
  const dialog = useRef<OnEnter>(null);
  const enter = useCallback((entry: Entry) => dialog.current?.(entry), []);
  return (
    <>
      <main id="content" className="page brew-day day-page" tabIndex={-1}>
        <DayHeading />
        <StatusLine state={state} session={session} />
        <AlarmList alarms={alarms} />
        <div className="mt-4 grid gap-x-12 gap-y-8 lg:grid-cols-[minmax(0,3fr)_minmax(0,2fr)]">
          <div className="flex flex-col gap-8">
            <NowPanel onEnter={enter} moves={moves} />
            <RestOfDayLine />
            {isDrawn ? <WholeDay onEnter={enter} moves={moves} /> : null}
          </div>
          {isDrawn ? (
            <aside aria-label="The day so far" className="flex flex-col gap-8">
              <DayChart />
              <DayLog onEnter={enter} />
              <DeviceHelp sounding={sounding} />
            </aside>
          ) : null}
        </div>
      </main>
      {mayWrite ? <EntryBar onEnter={enter} moves={moves} /> : null}
      <EntryDialog ref={dialog} session={session} database={database} />
    </>
  );
}

/** The alarms as they stand, the same list until one of them is due or the log says otherwise. */
function useOpenAlarms(): readonly Alarm[] {
  const { timers } = useDay().log;
  const count = useOfDayTime((now) => dueCount(openAlarms(timers, now)));
  const present = useDay().present;
  return useMemo(() => openAlarms(timers, present()), [timers, present, count]);
}

const dueCount = (alarms: readonly Alarm[]): number => alarms.filter(({ isDue }) => isDue).length;
