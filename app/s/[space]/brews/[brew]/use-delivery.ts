"use client";

import { useRef } from "react";
import type { ActionResult } from "@/lib/model/action-result";
import type { Delivery } from "./reading-state";

export type RecordReading = (input: unknown) => Promise<ActionResult<{ readonly savedAt: Date }>>;

interface Sent {
  readonly written: string;
  readonly message: Readonly<Record<string, unknown>>;
}

const TRY_AGAIN = "Not saved – try again. What you typed is still here.";

/**
 * Sends readings one at a time. A message without an answer may have arrived, so it is sent again as it was for as long
 * as the same is `written`, and the log keeps it once.
 */
export function useDelivery(record: RecordReading): {
  readonly isSending: () => boolean;
  readonly deliver: (written: string, compose: () => Sent["message"]) => Promise<Delivery>;
} {
  const sending = useRef(false);
  const unanswered = useRef<Sent | null>(null);

  async function deliver(written: string, compose: () => Sent["message"]): Promise<Delivery> {
    sending.current = true;
    const sent = unanswered.current?.written === written ? unanswered.current : { written, message: compose() };
    unanswered.current = sent;
    try {
      const answer = await record(sent.message);
      // Whatever the server says, it has answered: a refused message is not in the log.
      unanswered.current = null;
      if (answer.status === "ok") return { kind: "saved", at: answer.data.savedAt };
      const why = answer.status === "refused" ? answer.message : Object.values(answer.fieldErrors).join(". ");
      return { kind: "not saved", why: `Not saved. ${why}` };
    } catch {
      return { kind: "not saved", why: TRY_AGAIN };
    } finally {
      sending.current = false;
    }
  }

  return { isSending: () => sending.current, deliver };
}
