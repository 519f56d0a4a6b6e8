"use server";

import { redirect } from "next/navigation";
import { z } from "zod";
import { copyOfPublication } from "@/lib/model/publication";
import { formAction } from "@/lib/server/action";
import { copyPublished } from "@/lib/server/publications/copy";
import { requireMember } from "@/lib/server/session";

const copyInto = copyOfPublication.extend({ into: z.string({ error: "Copy into is not chosen" }) });

export const copyPublishedAction = formAction(copyInto, async ({ into, ...copy }): Promise<void> => {
  const target = await requireMember(into);
  const { id } = await copyPublished(target, copy);
  redirect(`/s/${target.spaceSlug}/recipes/${id}`);
});
