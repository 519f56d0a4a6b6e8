import type { RecipeDraft } from "@/lib/model/recipe-draft";

/**
 * What the server was last told of a draft, as long as the page's scripts live: the way back through the browser's
 * history shows a page as it was fetched, and that is older than what was written since.
 */
const remembered = new Map<string, { readonly atMs: number; readonly draft: RecipeDraft | null }>();

export function rememberDraft(place: string, draft: RecipeDraft | null): void {
  remembered.set(place, { atMs: Date.now(), draft });
}

/** The later of what the page came with and what is remembered. */
export function latestDraft(place: string, fetched: RecipeDraft | null): RecipeDraft | null {
  const known = remembered.get(place);
  if (known === undefined) return fetched;
  const { atMs, draft } = known;
  if (fetched === null) return draft;
  if (draft === null) return fetched.savedAt.getTime() > atMs ? fetched : null;
  return draft.lockVersion >= fetched.lockVersion ? draft : fetched;
}
