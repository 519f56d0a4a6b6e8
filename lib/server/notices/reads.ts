import "server-only";
import { NOTICE_KINDS, noticePayload, type Notice } from "@/lib/model/notice";
import { inSpace } from "../db";
import type { Member } from "../session";
import { storedWord } from "../stored-word";

const MOST_SHOWN = 200;

const COLUMNS = { id: true, kind: true, payload: true, createdAt: true, readAt: true, mailedAt: true } as const;

/** What the member was told, the newest first. */
export async function listNotices({ spaceId, userId }: Member): Promise<readonly Notice[]> {
  const rows = await inSpace(spaceId, userId, (tx) =>
    tx.notice.findMany({
      where: { spaceId, userId },
      select: COLUMNS,
      orderBy: [{ createdAt: "desc" }, { id: "asc" }],
      take: MOST_SHOWN,
    }),
  );
  return rows.map(toNotice);
}

export async function countUnread({ spaceId, userId }: Member): Promise<number> {
  return inSpace(spaceId, userId, (tx) => tx.notice.count({ where: { spaceId, userId, readAt: null } }));
}

export async function findNotice(
  { spaceId, userId }: Pick<Member, "spaceId" | "userId">,
  id: string,
): Promise<Notice | null> {
  const row = await inSpace(spaceId, userId, (tx) =>
    tx.notice.findUnique({ where: { spaceId_id: { spaceId, id } }, select: COLUMNS }),
  );
  return row === null ? null : toNotice(row);
}

function toNotice(row: Omit<Notice, "kind" | "payload"> & { kind: string; payload: unknown }): Notice {
  return { ...row, kind: storedWord(NOTICE_KINDS, row.kind), payload: noticePayload.parse(row.payload) };
}
