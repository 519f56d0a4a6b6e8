"use server";

import { z } from "zod";
import { draftChange, type DraftOutcome } from "@/lib/model/recipe-draft";
import { recordId } from "@/lib/model/written";
import { action } from "@/lib/server/action";
import { discardDraft, saveDraft } from "@/lib/server/drafts/writes";
import { requireMember } from "@/lib/server/session";

const draftOfSpace = draftChange.extend({ space: z.string() });
const discarding = z.strictObject({ space: z.string(), id: recordId });

export const saveDraftAction = action(draftOfSpace, async ({ space, ...change }): Promise<DraftOutcome> => {
  return saveDraft(await requireMember(space), change);
});

export const discardDraftAction = action(discarding, async ({ space, id }): Promise<null> => {
  await discardDraft(await requireMember(space), id);
  return null;
});
