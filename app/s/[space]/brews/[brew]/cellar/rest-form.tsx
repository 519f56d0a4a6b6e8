"use client";

import { DIACETYL_STEP } from "@/lib/model/cellar/reminders";
import type { EventContent } from "@/lib/model/log/log-event";
import { useHydrated } from "@/lib/ui/use-hydrated";
import { EntryLine } from "../entry-line";
import type { RecordReading } from "../use-delivery";
import { useLogEntry } from "../use-log-entry";

interface RestFormProps {
  readonly brewId: string;
  readonly record: RecordReading;
}

const restStep = (act: "done" | "left out", why: string): EventContent => ({
  ...{ kind: "step", step: DIACETYL_STEP, title: "Rest for diacetyl", minutes: 0, after: null },
  act,
  why,
});

/** Says that the beer is let warm, or that it needs no rest. */
export function RestForm({ brewId, record }: RestFormProps) {
  const { delivery, send } = useLogEntry(brewId, record);
  const isHydrated = useHydrated();
  const log = (act: "done" | "left out", why: string) => (): void =>
    void send([{ content: restStep(act, why), at: null }]);
  return (
    <div className="no-print mt-2 flex flex-wrap items-center gap-3">
      <button type="button" className="button" disabled={!isHydrated} onClick={log("done", "")}>
        The rest has begun
      </button>
      <button
        type="button"
        className="button button-quiet"
        disabled={!isHydrated}
        onClick={log("left out", "Tasted: no butter in it")}
      >
        Not needed: no butter tasted
      </button>
      <EntryLine delivery={delivery} />
    </div>
  );
}
