import "server-only";
import { inSpace } from "../db";

interface OwnPhoto {
  readonly id: string;
  readonly mime: string;
  readonly key: string;
}

/** The photos that somebody took in a space, as they are named in the store. */
export async function ownPhotos(spaceId: string, userId: string): Promise<readonly OwnPhoto[]> {
  const rows = await inSpace(spaceId, userId, (tx) =>
    tx.attachment.findMany({
      where: { spaceId, uploaderId: userId },
      select: { id: true, mime: true, sha256: true },
      orderBy: { id: "asc" },
    }),
  );
  return rows.map(({ id, mime, sha256 }) => ({ id, mime, key: Buffer.from(sha256).toString("hex") }));
}
