"use client";

import { useCallback, useMemo, useRef, useState } from "react";
import type { KeptEntry, TrialEntry } from "@/lib/model/trial/trial-entry";
import { deliver } from "./deliver";
import { forgetPending, keepPending, readPending } from "./pending-entries";
import { useTryingAgain } from "./use-trying-again";

export interface TrialLog {
  /** What the server has and what only this device has, together. */
  readonly entries: readonly TrialEntry[];
  readonly pendingCount: number;
  /** Why the last delivery failed; null where it did not. */
  readonly trouble: string | null;
  /** What the server would not take, by its reason. */
  readonly refused: readonly string[];
  readonly add: (entry: TrialEntry) => void;
}

/**
 * The entries of a trial on this device. Each is kept here first and sent then; what cannot be sent is tried again when
 * the network comes back, every quarter of a minute, and when the page is opened next.
 */
export function useTrialLog(a: {
  readonly trialId: string;
  readonly kept: readonly KeptEntry[];
  readonly address: string;
  readonly mayWrite: boolean;
}): TrialLog {
  const { trialId, address, mayWrite } = a;
  const [kept, setKept] = useState<readonly KeptEntry[]>(a.kept);
  const [pending, setPending] = useState<readonly TrialEntry[]>([]);
  const [trouble, setTrouble] = useState<string | null>(null);
  const [refused, setRefused] = useState<readonly string[]>([]);
  // Where the storage of the browser is shut, this alone holds what was not sent.
  const unsent = useRef<readonly TrialEntry[]>([]);
  const sending = useRef(false);

  const send = useCallback(async (): Promise<void> => {
    if (sending.current) return;
    sending.current = true;
    const entries = unsent.current.slice(0, 200);
    const delivery = await deliver(address, entries);
    sending.current = false;
    setTrouble(delivery.ok ? null : delivery.why);
    if (!delivery.ok) return;
    const { stored, refused: turnedDown, entries: all } = delivery.answer;
    const done = new Set([...stored, ...turnedDown.map(({ id }) => id)]);
    unsent.current = unsent.current.filter(({ id }) => !done.has(id));
    forgetPending(trialId, done);
    setPending(unsent.current);
    setKept(all);
    if (turnedDown.length > 0) setRefused((before) => [...before, ...turnedDown.map(({ reason }) => reason)]);
    if (unsent.current.length > 0) void send();
  }, [address, trialId]);

  const add = useCallback(
    (entry: TrialEntry): void => {
      unsent.current = [...unsent.current, entry];
      keepPending(trialId, entry);
      setPending(unsent.current);
      void send();
    },
    [trialId, send],
  );

  const begin = useCallback((): void => {
    const here = new Set(unsent.current.map(({ id }) => id));
    unsent.current = [...readPending(trialId).filter(({ id }) => !here.has(id)), ...unsent.current];
    setPending(unsent.current);
    void send();
  }, [trialId, send]);
  useTryingAgain(mayWrite, begin);

  const entries = useMemo(() => together(kept, pending), [kept, pending]);
  return { entries, pendingCount: pending.length, trouble, refused, add };
}

function together(kept: readonly KeptEntry[], pending: readonly TrialEntry[]): readonly TrialEntry[] {
  const there = new Set(kept.map(({ id }) => id));
  return [...kept, ...pending.filter(({ id }) => !there.has(id))];
}
