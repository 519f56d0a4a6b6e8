import { z } from "zod";
import { draftChange, type DraftChange } from "@/lib/model/recipe-draft";

/**
 * What this browser holds of a draft until the server has it. Nothing stays here after that: the next person at this
 * computer has no business with it.
 */
export interface LocalDrafts {
  readonly read: (id: string) => LocalDraft | null;
  readonly write: (draft: LocalDraft) => void;
  readonly clear: (id: string) => void;
  /** New recipes that never reached the server. */
  readonly newOnes: () => readonly LocalDraft[];
}

const localDraft = z.strictObject({ change: draftChange, atMs: z.number() });

export interface LocalDraft {
  readonly change: DraftChange;
  readonly atMs: number;
}

/** The drafts of one person in one space. */
export function localDrafts(owner: string, storage: () => Storage = () => window.localStorage): LocalDrafts {
  const prefix = `gylebook-draft.${owner}.`;
  return {
    read: (id) => attempt(() => parsed(storage().getItem(prefix + id)), null),
    write: (draft) => attempt(() => storage().setItem(prefix + draft.change.id, JSON.stringify(draft)), undefined),
    clear: (id) => attempt(() => storage().removeItem(prefix + id), undefined),
    newOnes: () =>
      attempt(() => {
        const keys = Object.keys(storage()).filter((key) => key.startsWith(prefix));
        const drafts = keys.flatMap((key) => parsed(storage().getItem(key)) ?? []);
        return drafts.filter(({ change }) => change.baseRev === null && change.lockVersion === 0);
      }, []),
  };
}

function parsed(text: string | null): LocalDraft | null {
  if (text === null) return null;
  const read = localDraft.safeParse(JSON.parse(text));
  return read.success ? read.data : null;
}

/** A browser may keep nothing, or be full; the server is asked in any case. */
function attempt<T>(work: () => T, otherwise: T): T {
  try {
    return work();
  } catch {
    return otherwise;
  }
}
