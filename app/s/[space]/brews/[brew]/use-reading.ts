"use client";

import { useReducer } from "react";
import type { Preferences } from "@/lib/model/preferences";
import { farFromPlan } from "@/lib/ui/brew/far-from-plan";
import {
  emptyDraft,
  readDraft,
  type DraftField,
  type MeasuringPoint,
  type WrittenReading,
} from "@/lib/ui/brew/reading-draft";
import { newId } from "@/lib/ui/brew/new-id";
import { nextDeviceStamp } from "./device";
import { readingReducer, type ReadingState } from "./reading-state";
import { useDelivery, type RecordReading } from "./use-delivery";

export interface ReadingEntry {
  readonly state: ReadingState;
  readonly type: (field: DraftField, text: string) => void;
  /** Sends the reading; `keep` once the question about one far from the plan is answered. */
  readonly save: (keep: boolean) => void;
}

interface ReadingOf {
  readonly brewId: string;
  readonly point: MeasuringPoint;
  readonly preferences: Preferences;
  readonly record: RecordReading;
  /** What is sent for a reading; of the numbers of the ledger, left out. */
  readonly compose?: ComposeReading;
}

export type ComposeReading = (
  brewId: string,
  point: MeasuringPoint,
  reading: WrittenReading,
) => Readonly<Record<string, unknown>>;

/** One reading from the first digit to the server's confirmation. */
export function useReading({ brewId, point, preferences, record, compose = messageOf }: ReadingOf): ReadingEntry {
  const { isSending, deliver } = useDelivery(record);
  const [state, dispatch] = useReducer(readingReducer, null, (): ReadingState => ({
    draft: emptyDraft(point, preferences),
    errors: {},
    delivery: { kind: "editing" },
    refusals: 0,
  }));

  function save(keep: boolean): void {
    // The second tap of two comes while the first is under way, or when its field is empty again.
    if (isSending() || (state.delivery.kind === "saved" && state.draft.amount === "")) return;
    const read = readDraft(state.draft, point, preferences);
    if (!read.ok) {
      dispatch({ kind: "refused", errors: read.errors });
      return;
    }
    const { dimension, expected } = point;
    const question = keep ? null : farFromPlan({ ...read.reading, expected, dimension, preferences });
    if (question === null) void send(read.reading);
    else dispatch({ kind: "delivery", delivery: { kind: "asking", question } });
  }

  async function send(reading: WrittenReading): Promise<void> {
    dispatch({ kind: "delivery", delivery: { kind: "saving" } });
    const delivery = await deliver(JSON.stringify(state.draft), () => compose(brewId, point, reading));
    dispatch({ kind: "delivery", delivery });
  }

  return { state, save, type: (field, text) => dispatch({ kind: "typed", field, text }) };
}

function messageOf(
  brewId: string,
  { quantity }: MeasuringPoint,
  reading: WrittenReading,
): Readonly<Record<string, unknown>> {
  const { value, sd, instrument, sampleC, note, entered } = reading;
  return {
    id: newId(),
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
