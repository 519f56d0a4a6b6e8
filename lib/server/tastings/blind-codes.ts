import "server-only";
import { randomInt } from "node:crypto";
import { BLIND_CODES } from "@/lib/model/tasting/prepare";
import { AppError } from "../app-error";
import type { SpaceTransaction } from "../db";

interface Within {
  readonly spaceId: string;
  readonly tastingId: string;
}

/**
 * Draws numbers that no bottle or glass of the tasting has yet. They come from the source of randomness that keys are
 * made of, so that nothing of order, time or brew is in them.
 */
export async function drawBlindCodes(tx: SpaceTransaction, where: Within, howMany: number): Promise<readonly number[]> {
  const { spaceId, tastingId } = where;
  const [entries, glasses] = await Promise.all([
    tx.tastingEntry.findMany({ where: { spaceId, tastingId }, select: { entryNo: true } }),
    tx.tastingGlass.findMany({ where: { spaceId, tastingId }, select: { glassNo: true } }),
  ]);
  const taken = new Set([...entries.map(({ entryNo }) => entryNo), ...glasses.map(({ glassNo }) => glassNo)]);
  const codes = Array.from({ length: BLIND_CODES.max - BLIND_CODES.min + 1 }, (_, at) => BLIND_CODES.min + at);
  const free = codes.filter((code) => !taken.has(code));
  if (howMany > free.length) {
    throw new AppError(
      "INVALID",
      `There are ${String(free.length)} blind codes left, and ${String(howMany)} are needed.`,
    );
  }
  return Array.from({ length: howMany }, () => free.splice(randomInt(free.length), 1)).flat();
}
