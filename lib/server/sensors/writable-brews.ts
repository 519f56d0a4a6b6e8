import "server-only";
import { mayWriteBrew } from "../brews/may-write";
import { inSpace } from "../db";
import type { Member } from "../session";

/** The brews that the member may write to, the latest first; none that was dropped. */
export async function listWritableBrews(
  member: Member,
): Promise<readonly { readonly id: string; readonly title: string }[]> {
  const { spaceId, userId } = member;
  const rows = await inSpace(spaceId, userId, (tx) =>
    tx.brew.findMany({
      where: { spaceId, droppedAt: null },
      select: { id: true, title: true, brewerUserId: true, collaborators: { select: { userId: true } } },
      orderBy: [{ createdAt: "desc" }, { id: "asc" }],
    }),
  );
  return rows.filter((row) => mayWriteBrew(member, row)).map(({ id, title }) => ({ id, title }));
}
