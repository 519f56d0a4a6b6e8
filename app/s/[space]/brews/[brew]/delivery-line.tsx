"use client";

import { ClockTime } from "@/lib/ui/brew/clock-time";
import type { Delivery } from "./reading-state";

interface DeliveryLineProps {
  readonly delivery: Delivery;
  readonly onKeep: () => void;
  readonly onChange: () => void;
}

/** Whether the reading is in the log. "Saved" is said only after the server has said so. */
export function DeliveryLine({ delivery, onKeep, onChange }: DeliveryLineProps) {
  return (
    <div role="status">
      {delivery.kind === "saved" ? (
        <p>
          Saved <ClockTime at={delivery.at} />
        </p>
      ) : null}
      {delivery.kind === "not saved" ? <p className="field-error">{delivery.why}</p> : null}
      {delivery.kind === "asking" ? (
        <div className="notice notice-attention flex flex-wrap items-center gap-x-4 gap-y-2">
          <p className="font-semibold">{delivery.question}</p>
          <button type="button" className="button" onClick={onKeep}>
            Keep it
          </button>
          <button type="button" className="button button-quiet" onClick={onChange}>
            Change it
          </button>
        </div>
      ) : null}
    </div>
  );
}
