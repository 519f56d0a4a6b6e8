import "server-only";
import { oldestCalendarAddress } from "@/lib/model/calendar-address";
import { directory } from "../db";
import type { Member } from "../session";
import { newToken, tokenHash } from "../tokens";

/** When the present address was made; null without one. The address itself is shown once, and only its hash is kept. */
export async function calendarSince({ spaceId, userId }: Member): Promise<Date | null> {
  const row = await directory.calendarToken.findFirst({
    where: { spaceId, userId, revokedAt: null, createdAt: { gt: oldestCalendarAddress(new Date()) } },
    select: { createdAt: true },
  });
  return row?.createdAt ?? null;
}

/** Makes a private address; the one before stops working at once. */
export async function makeCalendarToken({ spaceId, userId }: Member): Promise<{ readonly token: string }> {
  const token = newToken();
  await directory.$transaction(async (tx) => {
    // Whoever asks twice at once is served one after the other, or the second would meet the first's open address.
    await tx.$queryRaw`
      SELECT FROM membership WHERE space_id = ${spaceId}::uuid AND user_id = ${userId}::uuid FOR UPDATE`;
    await tx.calendarToken.updateMany({ where: { spaceId, userId, revokedAt: null }, data: { revokedAt: new Date() } });
    await tx.calendarToken.create({ data: { tokenHash: tokenHash(token), spaceId, userId } });
  });
  return { token };
}

export async function revokeCalendarToken({ spaceId, userId }: Member): Promise<void> {
  await directory.calendarToken.updateMany({
    where: { spaceId, userId, revokedAt: null },
    data: { revokedAt: new Date() },
  });
}
