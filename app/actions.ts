"use server";

import { redirect } from "next/navigation";
import { newClub } from "@/lib/model/club";
import { formAction } from "@/lib/server/action";
import { requireViewer } from "@/lib/server/session";
import { foundClub } from "@/lib/server/spaces/writes";

export const foundClubAction = formAction(newClub, async (club) => {
  const { slug } = await foundClub(await requireViewer(), club);
  redirect(`/s/${slug}`);
});
