import "server-only";
import { inSpace } from "../db";
import { isRecordId } from "../record-id";
import type { Member } from "../session";

/** Whether there is such a brew in the club of the member. */
export async function hasBrew({ spaceId, userId }: Member, id: string): Promise<boolean> {
  if (!isRecordId(id)) return false;
  const found = await inSpace(spaceId, userId, (tx) =>
    tx.brew.findUnique({ where: { spaceId_id: { spaceId, id } }, select: { id: true } }),
  );
  return found !== null;
}
