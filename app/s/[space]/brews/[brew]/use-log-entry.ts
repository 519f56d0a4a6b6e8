"use client";

import { useState } from "react";
import type { EventContent, LogEvent } from "@/lib/model/log/log-event";
import { newId } from "@/lib/ui/brew/new-id";
import { nextDeviceStamp } from "./device";
import type { Delivery } from "./reading-state";
import { useDelivery, type RecordReading } from "./use-delivery";

/** Something for the log, with when it happened; null is now. */
export interface NewEntry {
  readonly content: EventContent;
  readonly at: Date | null;
}

/** Sends entries to the log of a brew and says how far they have come. What was typed stays until they are there. */
export function useLogEntry(
  brewId: string,
  record: RecordReading,
): {
  readonly delivery: Delivery;
  readonly send: (entries: readonly NewEntry[]) => Promise<boolean>;
  readonly edited: () => void;
} {
  const { isSending, deliver } = useDelivery(record);
  const [delivery, setDelivery] = useState<Delivery>({ kind: "editing" });

  async function send(entries: readonly NewEntry[]): Promise<boolean> {
    if (isSending()) return false;
    setDelivery({ kind: "saving" });
    const outcome = await deliver(JSON.stringify(entries), () => ({
      events: entries.map(({ content, at }) => eventOf(brewId, content, at)),
    }));
    setDelivery(outcome);
    return outcome.kind === "saved";
  }

  return { delivery, send, edited: () => setDelivery({ kind: "editing" }) };
}

/** An event made on this device, now. */
export function eventOf(brewId: string, content: EventContent, at: Date | null): LogEvent {
  return {
    id: newId(),
    ...nextDeviceStamp(),
    brewId,
    occurredAt: (at ?? new Date()).toISOString(),
    ...content,
  };
}
