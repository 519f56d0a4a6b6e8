import "server-only";
import { NOTICE_KINDS, readAbout, type Notice } from "@/lib/model/notice";
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

interface NoticeRow extends Pick<Notice, "id" | "createdAt" | "readAt" | "mailedAt"> {
  readonly kind: string;
  readonly payload: unknown;
}

function toNotice({ kind, payload, ...row }: NoticeRow): Notice {
  return { ...row, ...readAbout(storedWord(NOTICE_KINDS, kind), payload) };
}
