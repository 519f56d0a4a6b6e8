import { notFound } from "next/navigation";
import { cache } from "react";
import { findComparison } from "@/lib/server/comparisons/reads";
import { requireMember } from "@/lib/server/session";

/** Who looks, and a saved comparison; once for the title and the page. Not found in another club. */
export const readComparison = cache(async (space: string, id: string) => {
  const member = await requireMember(space);
  return { member, saved: (await findComparison(member, id)) ?? notFound() };
});
