import "server-only";
import { mayWriteBrew } from "../brews/may-write";
import type { SpaceTransaction } from "../db";
import type { Member } from "../session";

/** Why an event for this brew is not taken; null for a brew that the member writes to. */
export type BrewRefusals = (brewId: string) => string | null;

export const NO_SUCH_BREW = "There is no such brew here.";
export const NOT_YOURS = "Only who brews this, their helpers and organisers write readings to it.";

/** Looks once at every brew that a delivery is for. A closed or dropped brew still takes what was read at it. */
export async function brewRefusals(
  tx: SpaceTransaction,
  member: Member,
  brewIds: ReadonlySet<string>,
): Promise<BrewRefusals> {
  const rows = await tx.brew.findMany({
    where: { spaceId: member.spaceId, id: { in: [...brewIds] } },
    select: { id: true, brewerUserId: true, collaborators: { select: { userId: true } } },
  });
  const brews = new Map(rows.map((row) => [row.id, row]));
  return (brewId) => {
    const brew = brews.get(brewId);
    if (brew === undefined) return NO_SUCH_BREW;
    return mayWriteBrew(member, brew) ? null : NOT_YOURS;
  };
}
