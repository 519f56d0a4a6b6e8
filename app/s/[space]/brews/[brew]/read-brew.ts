import { notFound } from "next/navigation";
import { cache } from "react";
import { findBrew } from "@/lib/server/brews/reads";
import { requireMember } from "@/lib/server/session";

/** Who looks, and the brew; once for the title and the page. Not found in another club. */
export const readBrew = cache(async (space: string, id: string) => {
  const member = await requireMember(space);
  return { member, brew: (await findBrew(member, id)) ?? notFound() };
});
