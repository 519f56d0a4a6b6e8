"use client";

import { ClockTime } from "@/lib/ui/brew/clock-time";
import type { Delivery } from "./reading-state";

/** Whether an entry is in the log, or why it is not. */
export function EntryLine({ delivery }: { readonly delivery: Delivery }) {
  return (
    <div role="status">
      {delivery.kind === "saving" ? <p className="text-muted">Saving…</p> : null}
      {delivery.kind === "saved" ? (
        <p>
          Saved <ClockTime at={delivery.at} />
        </p>
      ) : null}
      {delivery.kind === "not saved" ? <p className="field-error">{delivery.why}</p> : null}
    </div>
  );
}
