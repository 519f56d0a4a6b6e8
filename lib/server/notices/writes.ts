import "server-only";
import { randomUUID } from "node:crypto";
import type { NoticeAbout, NoticesRead } from "@/lib/model/notice";
import { inSpace, toJson, type SpaceTransaction } from "../db";
import { environment } from "../environment";
import type { Member } from "../session";

export const MAIL_TOPIC = "notice by mail";

/**
 * Tells people something, in the transaction of what they are told: a change that is undone tells nobody. Where mail is
 * set up, a line in the outbox goes with each notice, with its ids only; who wants mail is asked when it is sent.
 */
export async function tell(
  tx: SpaceTransaction,
  { spaceId }: Pick<Member, "spaceId">,
  userIds: readonly string[],
  { kind, payload }: NoticeAbout,
): Promise<void> {
  const notices = [...new Set(userIds)].map((userId) => ({ spaceId, id: randomUUID(), userId, kind }));
  if (notices.length === 0) return;
  // Nothing is asked back: the database shows a notice only to the one whom it tells.
  await tx.notice.createMany({ data: notices.map((notice) => ({ ...notice, payload: toJson(payload) })) });
  if (environment.mail === null) return;
  await tx.outbox.createMany({
    data: notices.map(({ id, userId }) => ({
      spaceId,
      id: randomUUID(),
      topic: MAIL_TOPIC,
      body: { noticeId: id, userId },
    })),
  });
}

/** Marks one's own notices as read; those of others are not there. */
export async function markRead({ spaceId, userId }: Member, { ids }: NoticesRead): Promise<void> {
  await inSpace(spaceId, userId, (tx) =>
    tx.notice.updateMany({
      where: { spaceId, userId, id: { in: [...ids] }, readAt: null },
      data: { readAt: new Date() },
    }),
  );
}
