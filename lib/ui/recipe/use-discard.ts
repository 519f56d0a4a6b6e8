"use client";

import type { RecipeContent } from "@/lib/model/recipe-content";
import { draftFromContent } from "./draft-from-content";
import type { DraftKeeper } from "./draft-keeper";
import { useEditor } from "./editor-context";
import type { Drafting } from "./use-draft-keeper";

const NO_ANSWER = "The draft is still there: the server did not answer. Try again.";

/** Throws the draft away, on the server first, and opens what was there before it. */
export function useDiscard(a: {
  readonly keeper: DraftKeeper;
  readonly drafting: Drafting;
  readonly title: string;
  readonly content: RecipeContent;
  readonly baseRev: number | null;
}): () => Promise<void> {
  const { keeper, drafting, title, content, baseRev } = a;
  const { store, preferences } = useEditor();
  return async () => {
    keeper.pause();
    const answer = await drafting.discard().catch(() => null);
    if (answer?.status !== "ok") {
      keeper.refuse(answer?.status === "refused" ? answer.message : NO_ANSWER);
      return;
    }
    store.dispatch({ type: "open", draft: draftFromContent({ title, content, preferences }), kettle: "", note: "" });
    keeper.reset({ baseRev, initial: null });
  };
}
