import type { ReactElement } from "react";
import { ClockTime } from "@/lib/ui/brew/clock-time";
import type { DaySession, DayState } from "../sync/day-session";
import { safetyWords } from "../sync/safety-words";
import { useOfDayTime } from "./day-context";

interface StatusLineProps {
  readonly state: DayState;
  readonly session: DaySession;
}

const SHOWN_SKEW_MS = 30_000;
const MINUTE_MS = 60_000;

/** What is safe on the server and what is on this device only. It is always in sight. */
export function StatusLine({ state, session }: StatusLineProps): ReactElement {
  const { waiting, connection, refusal, clockAheadMs } = state;
  const refused = waiting.filter((each) => each.refusal !== null).length;
  const count = waiting.length;
  return (
    <div className="day-status">
      <p role="status" className="flex flex-wrap items-baseline gap-x-3">
        <strong>{safetyWords(count, connection, { one: "entry", many: "entries" })}</strong>
        {count > 0 && connection !== "signed out" ? (
          <button type="button" className="button-link" onClick={() => void session.send()}>
            Send now
          </button>
        ) : null}
      </p>
      <p className="day-clock">
        <TimeOfDay />
      </p>
      {connection === "signed out" ? (
        <p className="basis-full">
          You are signed out. Go on brewing: everything is kept here and sent when you have{" "}
          <a href={`/sign-in?next=${encodeURIComponent(location.pathname)}`}>signed in again</a>.
        </p>
      ) : null}
      {refusal === null ? null : (
        <p className="field-error basis-full">The server does not take what waits here: {refusal}</p>
      )}
      {refused === 0 ? null : (
        <p className="field-error basis-full">
          {refused === 1 ? "One entry was" : `${String(refused)} entries were`} refused; see the log below.
        </p>
      )}
      {clockAheadMs !== null && Math.abs(clockAheadMs) > SHOWN_SKEW_MS ? (
        <p className="basis-full">
          The clock of this device is {skew(clockAheadMs)}; times here follow the server’s where that is more than a
          minute.
        </p>
      ) : null}
    </div>
  );
}

function TimeOfDay(): ReactElement {
  const minute = useOfDayTime((now) => Math.floor(now / MINUTE_MS));
  return <ClockTime at={new Date(minute * MINUTE_MS)} />;
}

function skew(aheadMs: number): string {
  const seconds = Math.round(Math.abs(aheadMs) / 1000);
  const amount = seconds < 120 ? `${String(seconds)} s` : `${String(Math.round(seconds / 60))} min`;
  return `${amount} ${aheadMs > 0 ? "slow" : "fast"}`;
}
