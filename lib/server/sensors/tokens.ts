import "server-only";
import { randomUUID } from "node:crypto";
import { MOST_KEYS, type NewSensorKey, type SensorKey } from "@/lib/model/sensor/sensor-token";
import { AppError } from "../app-error";
import { directory, inSpace } from "../db";
import { mayAddTo } from "../log/require-writable";
import { requireAbility } from "../permissions";
import type { Member } from "../session";
import { newToken, tokenHash } from "../tokens";

const DAY_MS = 86_400_000;

/** Lets whoever finds one in a file know what it is. */
export const TOKEN_PREFIX = "gyle_";

/** The keys of the member in this club, those that are over last. */
export async function listSensorKeys({ spaceId, userId }: Member): Promise<readonly SensorKey[]> {
  const rows = await directory.sensorToken.findMany({
    where: { spaceId, userId },
    orderBy: [{ revokedAt: { sort: "desc", nulls: "first" } }, { createdAt: "desc" }],
    select: {
      id: true,
      name: true,
      brewId: true,
      createdAt: true,
      expiresAt: true,
      revokedAt: true,
      lastUsedAt: true,
    },
  });
  const ids = rows.flatMap(({ brewId }) => (brewId === null ? [] : [brewId]));
  const brews = await inSpace(spaceId, userId, (tx) =>
    tx.brew.findMany({ where: { spaceId, id: { in: ids } }, select: { id: true, title: true } }),
  );
  const titles = new Map(brews.map(({ id, title }) => [id, title]));
  return rows.map(({ brewId, ...row }) => ({
    ...row,
    brew: brewId === null ? null : { id: brewId, title: titles.get(brewId) ?? "A brew that is gone" },
  }));
}

/** Makes a key for a sensor. It is told once, and kept as a hash. */
export async function makeSensorKey(
  member: Member,
  { name, brewId, days }: NewSensorKey,
): Promise<{ readonly token: string }> {
  requireAbility(member, "brew");
  if (brewId !== null) await mayAddTo(member, brewId);
  const { spaceId, userId } = member;
  const token = TOKEN_PREFIX + newToken();
  await directory.$transaction(async (tx) => {
    // Whoever asks twice at once is served one after the other, so that together they do not go over the most.
    await tx.$queryRaw`
      SELECT FROM membership WHERE space_id = ${spaceId}::uuid AND user_id = ${userId}::uuid FOR UPDATE`;
    const now = new Date();
    const open = await tx.sensorToken.count({ where: { spaceId, userId, revokedAt: null, expiresAt: { gt: now } } });
    if (open >= MOST_KEYS) {
      throw new AppError("CONFLICT", `You have ${String(MOST_KEYS)} keys here, which is the most; revoke one first.`);
    }
    await tx.sensorToken.create({
      data: {
        ...{ id: randomUUID(), spaceId, userId, brewId, name, tokenHash: tokenHash(token) },
        ...{ createdAt: now, expiresAt: new Date(now.getTime() + days * DAY_MS) },
      },
    });
  });
  return { token };
}

/** Ends a key of the member at once. */
export async function revokeSensorKey({ spaceId, userId }: Member, id: string): Promise<void> {
  const { count } = await directory.sensorToken.updateMany({
    where: { id, spaceId, userId, revokedAt: null },
    data: { revokedAt: new Date() },
  });
  if (count === 0) throw new AppError("NOT_FOUND", "There is no such key, or it was revoked already.");
}
