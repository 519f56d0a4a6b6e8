import "server-only";
import { directory, inSpace } from "../db";
import type { Member } from "../session";

type Reader = Pick<Member, "spaceId" | "userId">;
type NameOf = (userId: string) => string;

interface Named {
  readonly name: string;
  /** They left the club, or came to it in a file and are nobody of this installation. */
  readonly isFormer: boolean;
}

const NAMELESS = "a former member";

/**
 * Names as a screen of a club shows them, by user id; whoever does not belong to the club now is marked. Content keeps
 * ids only, because people are in the directory and may be elsewhere.
 */
export async function displayNames(reader: Reader, userIds: readonly string[]): Promise<NameOf> {
  const names = await namesIn(reader, userIds);
  return (userId) => {
    const found = names.get(userId);
    if (found === undefined) return NAMELESS;
    return found.isFormer ? `${found.name} (former member)` : found.name;
  };
}

/** Names as somebody is credited or a file says them: without a mark, which holds for one club at one time. */
export async function givenNames(reader: Reader, userIds: readonly string[]): Promise<NameOf> {
  const names = await namesIn(reader, userIds);
  return (userId) => names.get(userId)?.name ?? NAMELESS;
}

/** People of the directory first: nobody of it takes the place of a name out of a file, whose id is drawn at random. */
async function namesIn({ spaceId, userId }: Reader, userIds: readonly string[]): Promise<ReadonlyMap<string, Named>> {
  const ids = [...new Set(userIds)];
  const people = await directory.appUser.findMany({
    // Whoever closed their account has no name any more.
    where: { id: { in: ids }, closedAt: null },
    select: {
      id: true,
      displayName: true,
      memberships: { where: { spaceId, status: "active" }, select: { role: true } },
    },
  });
  const names = new Map(
    people.map((row): [string, Named] => [row.id, { name: row.displayName, isFormer: row.memberships.length === 0 }]),
  );
  const unknown = ids.filter((id) => !names.has(id));
  if (unknown.length === 0) return names;
  const former = await inSpace(spaceId, userId, (tx) =>
    tx.formerMember.findMany({ where: { spaceId, id: { in: unknown } }, select: { id: true, displayName: true } }),
  );
  for (const { id, displayName } of former) names.set(id, { name: displayName, isFormer: true });
  return names;
}
