"use server";

import { redirect } from "next/navigation";
import { z } from "zod";
import { newRevision } from "@/lib/model/recipe-content";
import { action } from "@/lib/server/action";
import { keepAsCopy } from "@/lib/server/recipes/copy";
import { findRecipe } from "@/lib/server/recipes/reads";
import { saveRevision } from "@/lib/server/recipes/writes";
import { requireMember } from "@/lib/server/session";
import type { SaveAnswer } from "@/lib/ui/recipe/save-answer";

const revisionOfSpace = newRevision.extend({ space: z.string() });

export const saveRevisionAction = action(revisionOfSpace, async ({ space, ...revision }): Promise<SaveAnswer> => {
  const member = await requireMember(space);
  const saved = await saveRevision(member, revision);
  if (saved.ok) return saved;
  if (saved.reason === "unchanged") return { ok: false, reason: "unchanged" };
  const newer = await findRecipe(member, revision.id);
  if (newer === null) throw new Error("a revision was stale, and its recipe is gone");
  return { ok: false, reason: "stale", newer };
});

/** Keeps what was written beside somebody else’s newer revision as a recipe of its own, which goes back to this one. */
export const keepMineAction = action(revisionOfSpace, async ({ space, ...revision }): Promise<SaveAnswer> => {
  const member = await requireMember(space);
  const { id } = await keepAsCopy(member, revision);
  redirect(`/s/${member.spaceSlug}/recipes/${id}`);
});
