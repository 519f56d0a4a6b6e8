import { trialEntry, type TrialEntry } from "@/lib/model/trial/trial-entry";
import { newId } from "@/lib/ui/brew/new-id";

/** What every entry has: an identifier of its own, which grows with time, and what it stands for. */
export function madeNow(
  run: number,
  at: Date,
  replaces: string | null,
): {
  readonly id: string;
  readonly run: number;
  readonly occurredAt: string;
  readonly replaces: string | null;
} {
  const id = newId();
  return { id, run, occurredAt: at.toISOString(), replaces };
}

/** The entry, or why it is none: what the server would say as well. */
export function checkedEntry(
  made: object,
): { readonly ok: true; readonly entry: TrialEntry } | { readonly ok: false; readonly why: string } {
  const read = trialEntry.safeParse(made);
  if (read.success) return { ok: true, entry: read.data };
  return { ok: false, why: read.error.issues.map(({ message }) => message).join(". ") };
}
