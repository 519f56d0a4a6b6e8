"use client";

import { useState, type ReactElement } from "react";
import { ClockTime } from "../brew/clock-time";
import type { DraftKeeper, KeepStatus } from "./draft-keeper";
import { useKeepStatus } from "./use-draft-keeper";

/** Whether the draft is kept, by the clock of the server, and the way to be rid of it. */
export function DraftLine(props: { readonly keeper: DraftKeeper; readonly onDiscard: () => void }): ReactElement {
  const { keeper, onDiscard } = props;
  const status = useKeepStatus(keeper);
  const [isAsked, setAsked] = useState(false);
  const trouble = troubleOf(status);
  return (
    <div className="flex flex-wrap items-center gap-x-3 text-sm">
      {/* Said aloud only when something is wrong: otherwise each pause would be interrupted. */}
      <p role="status" className="text-accent">
        {trouble}
      </p>
      <p className="min-w-24 text-muted">
        {status.kind === "saved" ? (
          <>
            Saved <ClockTime at={status.at} />
          </>
        ) : null}
        {status.kind === "saving" ? "Saving…" : null}
      </p>
      {status.kind === "nothing" ? null : isAsked ? (
        <span className="flex flex-wrap items-center gap-x-3" role="group" aria-label="Discard the draft">
          <button
            type="button"
            className="button-link"
            onClick={() => {
              setAsked(false);
              onDiscard();
            }}
          >
            Discard it for good
          </button>
          <button type="button" className="button-link" autoFocus onClick={() => setAsked(false)}>
            Keep it
          </button>
        </span>
      ) : (
        <button type="button" className="button-link" onClick={() => setAsked(true)}>
          Discard the draft
        </button>
      )}
    </div>
  );
}

function troubleOf(status: KeepStatus): string {
  if (status.kind === "retrying") return "Not saved – retrying";
  return status.kind === "refused" ? `Not saved. ${status.why}` : "";
}
