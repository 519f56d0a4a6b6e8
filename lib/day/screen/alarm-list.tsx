import type { ReactElement } from "react";
import { ClockTime } from "@/lib/ui/brew/clock-time";
import type { Alarm } from "../alarm/due-alarms";
import { timerAct } from "../plan/step-events";
import { useDay } from "./day-context";
import { TimeLeft } from "./time-left";

const LATER_MS = 2 * 60_000;

/** What rings now, large, and what will ring. */
export function AlarmList({ alarms }: { readonly alarms: readonly Alarm[] }): ReactElement | null {
  if (alarms.length === 0) return null;
  const due = alarms.filter(({ isDue }) => isDue);
  const toCome = alarms.filter(({ isDue }) => !isDue);
  return (
    <section aria-label="Alarms" className="mt-4">
      <div role="alert">
        {due.map((alarm) => (
          <DueAlarm key={alarm.timer} alarm={alarm} />
        ))}
      </div>
      {toCome.length === 0 ? null : (
        <ul className="list-ruled">
          {toCome.map((alarm) => (
            <ComingAlarm key={alarm.timer} alarm={alarm} />
          ))}
        </ul>
      )}
    </section>
  );
}

function DueAlarm({ alarm }: { readonly alarm: Alarm }): ReactElement {
  const { write, mayWrite, present } = useDay();
  const { timer, label, step, dueAt } = alarm;
  return (
    <div className="day-alarm">
      <p className="text-xl font-semibold">{label}</p>
      <p>
        Since <ClockTime at={new Date(dueAt)} />
      </p>
      {mayWrite ? (
        <div className="flex flex-wrap gap-3">
          <button
            type="button"
            className="button day-button"
            onClick={() => void write([timerAct(timer, "acknowledged")])}
          >
            Heard it
          </button>
          <button
            type="button"
            className="button button-quiet day-button"
            onClick={() =>
              void write([
                timerAct(timer, "acknowledged"),
                timerAct(timer, "set", { label, step, dueAt: new Date(present() + LATER_MS).toISOString() }),
              ])
            }
          >
            Again in 2 min
          </button>
        </div>
      ) : null}
    </div>
  );
}

function ComingAlarm({ alarm }: { readonly alarm: Alarm }): ReactElement {
  const { write, mayWrite } = useDay();
  const { timer, label, dueAt } = alarm;
  return (
    <li className="flex flex-wrap items-center justify-between gap-x-4 py-1">
      <span>
        {label}, <ClockTime at={new Date(dueAt)} />
      </span>
      <span className="flex items-center gap-4">
        <TimeLeft until={dueAt} className="text-2xl font-semibold" />
        {mayWrite ? (
          <button type="button" className="button-link" onClick={() => void write([timerAct(timer, "cleared")])}>
            Clear<span className="sr-only"> {label}</span>
          </button>
        ) : null}
      </span>
    </li>
  );
}
