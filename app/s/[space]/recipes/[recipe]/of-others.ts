import type { DraftSummary } from "@/lib/model/recipe-draft";

export type OtherDraft = Pick<DraftSummary, "writerName" | "begunAt">;

/** Who else writes on a recipe and since when, which is all that others are told. */
export function ofOthers(drafts: readonly DraftSummary[]): readonly OtherDraft[] {
  return drafts.filter(({ isOwn }) => !isOwn).map(({ writerName, begunAt }) => ({ writerName, begunAt }));
}
