import { trialEntry, type TrialEntry } from "@/lib/model/trial/trial-entry";

const keyOf = (trialId: string): string => `gylebook-trial-${trialId}`;

/** Entries of a trial that this device has made and the server may not have. */
export function readPending(trialId: string): readonly TrialEntry[] {
  try {
    const kept: unknown = JSON.parse(window.localStorage.getItem(keyOf(trialId)) ?? "[]");
    if (!Array.isArray(kept)) return [];
    return kept.flatMap((each: unknown) => {
      const read = trialEntry.safeParse(each);
      return read.success ? [read.data] : [];
    });
  } catch {
    return [];
  }
}

/** Whether the device keeps an entry; where storage is shut, the page alone holds it. */
export function keepPending(trialId: string, entry: TrialEntry): boolean {
  return write(trialId, [...readPending(trialId).filter(({ id }) => id !== entry.id), entry]);
}

/** Forgets what the server has; what another tab has added meanwhile stays. */
export function forgetPending(trialId: string, ids: ReadonlySet<string>): void {
  write(
    trialId,
    readPending(trialId).filter(({ id }) => !ids.has(id)),
  );
}

function write(trialId: string, entries: readonly TrialEntry[]): boolean {
  try {
    if (entries.length === 0) window.localStorage.removeItem(keyOf(trialId));
    else window.localStorage.setItem(keyOf(trialId), JSON.stringify(entries));
    return true;
  } catch {
    return false;
  }
}
