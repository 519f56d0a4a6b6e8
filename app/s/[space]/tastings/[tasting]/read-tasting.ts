import { notFound } from "next/navigation";
import { cache } from "react";
import { roleMay } from "@/lib/model/roles";
import { requireMember } from "@/lib/server/session";
import { findPreparation } from "@/lib/server/tastings/preparation";
import { findTasting } from "@/lib/server/tastings/reads";

/** Who looks, and the tasting as everybody may see it; once for the title and the page. Not found in another club. */
export const readTasting = cache(async (space: string, id: string) => {
  const member = await requireMember(space);
  const tasting = (await findTasting(member, id)) ?? notFound();
  const organises = roleMay(member.role, "organise");
  return { member, tasting, isSteward: tasting.stewardId === member.userId, organises };
});

/** All that the steward knows; for anybody else there is no such page. */
export const readPreparation = cache(async (space: string, id: string) => {
  const { member, tasting } = await readTasting(space, id);
  return { member, tasting, preparation: (await findPreparation(member, id)) ?? notFound() };
});
