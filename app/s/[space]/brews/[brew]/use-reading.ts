"use client";

import { useReducer, useRef } from "react";
import type { ActionResult } from "@/lib/model/action-result";
import type { Preferences } from "@/lib/model/preferences";
import { farFromPlan } from "@/lib/ui/brew/far-from-plan";
import {
  emptyDraft,
  readDraft,
  type DraftErrors,
  type DraftField,
  type MeasuringPoint,
  type WrittenReading,
} from "@/lib/ui/brew/reading-draft";
import { uuidV7 } from "@/lib/ui/brew/uuid-v7";
import { nextDeviceStamp } from "./device";
import { readingReducer, type ReadingState } from "./reading-state";

export type RecordReading = (input: unknown) => Promise<ActionResult<{ readonly savedAt: Date }>>;

export interface ReadingEntry {
  readonly state: ReadingState;
  readonly type: (field: DraftField, text: string) => void;
  /** Sends the reading; `keep` after the question about one far from the plan. Answers with what is wrong, if anything. */
  readonly save: (keep: boolean) => DraftErrors;
}

interface Sent {
  readonly written: string;
  readonly message: Readonly<Record<string, unknown>>;
}

const TRY_AGAIN = "Not saved – try again. What you typed is still here.";

/** One reading from the first digit to the server's confirmation. */
export function useReading(a: {
  readonly brewId: string;
  readonly point: MeasuringPoint;
  readonly preferences: Preferences;
  readonly record: RecordReading;
}): ReadingEntry {
  const { brewId, point, preferences, record } = a;
  const [state, dispatch] = useReducer(readingReducer, null, () => ({
    draft: emptyDraft(point, preferences),
    errors: {},
    delivery: { kind: "editing" as const },
  }));
  const isSending = useRef(false);
  // A message that may have arrived is sent again as it was, so that the log keeps it once.
  const unanswered = useRef<Sent | null>(null);

  function save(keep: boolean): DraftErrors {
    // The second tap of two comes while the first is under way, or when its field is empty again.
    if (isSending.current || (state.delivery.kind === "saved" && state.draft.amount === "")) return {};
    const read = readDraft(state.draft, point, preferences);
    if (!read.ok) {
      dispatch({ kind: "refused", errors: read.errors });
      return read.errors;
    }
    const { dimension, expected } = point;
    const question = keep ? null : farFromPlan({ ...read.reading, expected, dimension, preferences });
    if (question === null) void send(read.reading);
    else dispatch({ kind: "delivery", delivery: { kind: "asking", question } });
    return {};
  }

  async function send(reading: WrittenReading): Promise<void> {
    isSending.current = true;
    dispatch({ kind: "delivery", delivery: { kind: "saving" } });
    const written = JSON.stringify(state.draft);
    if (unanswered.current?.written !== written) {
      unanswered.current = { written, message: messageOf(brewId, point, reading) };
    }
    dispatch({ kind: "delivery", delivery: await deliver(record, unanswered.current.message) });
    isSending.current = false;
  }

  async function deliver(to: RecordReading, message: Sent["message"]): Promise<ReadingState["delivery"]> {
    try {
      const answer = await to(message);
      // Whatever the server says, it has answered: a refused message is not in the log.
      unanswered.current = null;
      if (answer.status === "ok") return { kind: "saved", at: answer.data.savedAt };
      const why = answer.status === "refused" ? answer.message : Object.values(answer.fieldErrors).join(". ");
      return { kind: "not saved", why: `Not saved. ${why}` };
    } catch {
      return { kind: "not saved", why: TRY_AGAIN };
    }
  }

  return { state, save, type: (field, text) => dispatch({ kind: "typed", field, text }) };
}

function messageOf(brewId: string, { quantity }: MeasuringPoint, reading: WrittenReading): Sent["message"] {
  const { value, sd, instrument, sampleC, note, entered } = reading;
  return {
    id: uuidV7(Date.now(), crypto.getRandomValues(new Uint8Array(10))),
    ...nextDeviceStamp(),
    brewId,
    quantity,
    value,
    sd,
    instrument,
    sampleC,
    occurredAt: (reading.occurredAt ?? new Date()).toISOString(),
    note,
    entered,
  };
}
