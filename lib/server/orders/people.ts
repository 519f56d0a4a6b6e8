import "server-only";
import { roleMay } from "@/lib/model/roles";
import type { Member } from "../session";
import { listPeople } from "../spaces/reads";

export interface Orderer {
  readonly userId: string;
  readonly name: string;
}

/** Who orders in this club, by name. */
export async function listOrderers(member: Member): Promise<readonly Orderer[]> {
  const people = await listPeople(member);
  return people
    .filter(({ role }) => roleMay(role, "order"))
    .map(({ userId, displayName }) => ({ userId, name: displayName }));
}
