import { notFound } from "next/navigation";
import { cache } from "react";
import { requireMember } from "@/lib/server/session";
import { findSharedBrew } from "@/lib/server/shared-brews/reads";

/** Who looks, and a shared brew; once for the title and the page. Not found in another club. */
export const readSharedBrew = cache(async (space: string, id: string) => {
  const member = await requireMember(space);
  return { member, shared: (await findSharedBrew(member, id)) ?? notFound() };
});
