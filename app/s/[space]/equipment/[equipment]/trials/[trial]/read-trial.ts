import { notFound } from "next/navigation";
import { cache } from "react";
import { findEquipment } from "@/lib/server/equipment/reads";
import { requireMember } from "@/lib/server/session";
import { findTrial } from "@/lib/server/trials/reads";

export interface TrialParams {
  readonly space: string;
  readonly equipment: string;
  readonly trial: string;
}

/** A trial with its kettle, once in a request. */
export const readTrial = cache(async (space: string, equipment: string, id: string) => {
  const member = await requireMember(space);
  const profile = (await findEquipment(member, equipment)) ?? notFound();
  const trial = (await findTrial(member, equipment, id)) ?? notFound();
  return { member, profile, trial };
});
