import type { ReactElement } from "react";
import { StorageHelp } from "../screen/storage-help";
import { UpdateHelp } from "../screen/update-help";
import type { JudgingSession, JudgingState } from "../sync/judging-session";
import { safetyWords } from "../sync/safety-words";

interface JudgingStatusProps {
  readonly state: JudgingState;
  readonly session: JudgingSession;
}

/** What is safe on the server and what is on this device only. It is always in sight. */
export function SafetyLine({ state, session }: JudgingStatusProps): ReactElement {
  const { waiting, connection } = state;
  return (
    <div className="judging-safety no-print">
      <p role="status">
        <strong>{safetyWords(waiting.length, connection, { one: "save", many: "saves" })}</strong>
      </p>
      {waiting.length > 0 && connection !== "signed out" ? (
        <button type="button" className="button-link" onClick={() => void session.send()}>
          Send now
        </button>
      ) : null}
    </div>
  );
}

/** What to do where something is not as it should be, and what this device can. */
export function JudgingStatus({ state, session }: JudgingStatusProps): ReactElement {
  const { connection, refusal } = state;
  const isSignedOut = connection === "signed out";
  return (
    <>
      {isSignedOut ? (
        <p className="mt-2">
          You are signed out. Go on judging: everything is kept here and sent when you have{" "}
          <a href={`/sign-in?next=${encodeURIComponent(location.pathname)}`}>signed in again</a>.
        </p>
      ) : null}
      {refusal === null ? null : (
        <p className="field-error mt-2">The server does not take what waits here: {refusal}</p>
      )}
      <Refused state={state} session={session} />
      <details className="mt-8 no-print">
        <summary className="target">This device</summary>
        <ul className="flex flex-col gap-2">
          <StorageHelp />
          <UpdateHelp />
        </ul>
      </details>
    </>
  );
}

/** What the server refused. It stays here, and can be taken along as a file. */
function Refused({ state, session }: JudgingStatusProps): ReactElement | null {
  const refused = state.waiting.filter((each) => each.refusal !== null);
  if (refused.length === 0) return null;
  const copy = `data:application/json,${encodeURIComponent(JSON.stringify(refused, null, 2))}`;
  return (
    <div className="notice notice-attention mt-4">
      <p className="font-semibold">Refused by the server, and kept here:</p>
      <ul>
        {refused.map(({ event, refusal }) => (
          <li key={event.id}>
            {event.kind === "sheet" ? `Entry ${String(event.entryNo)}` : `Flight ${String(event.flightNo)}`}: {refusal}
          </li>
        ))}
      </ul>
      <button type="button" className="button" onClick={() => void session.retry()}>
        Send again
      </button>{" "}
      <a className="button button-quiet" download="refused-sheets.json" href={copy}>
        Save a copy
      </a>
    </div>
  );
}
