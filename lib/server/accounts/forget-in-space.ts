import "server-only";
import { blobsOf } from "../blobs/open-blobs";
import { inSpace, type SpaceTransaction } from "../db";
import { MAIL_TOPIC } from "../notices/writes";

const NAMELESS_KETTLE = "A former member's kettle";
const NAMELESS_AUTHOR = "a former member";

/**
 * Takes out of a club what is about a person: their name on public pages, the names of their kettles, drafts, notices and
 * mail on its way. What they brewed stays for the others to compare with, under a number that leads to nobody. Done twice
 * it changes nothing more.
 */
export async function forgetInClub(spaceId: string, userId: string): Promise<void> {
  await inSpace(spaceId, userId, async (tx) => {
    await tx.recipeDraft.deleteMany({ where: { spaceId, userId } });
    await tx.notice.deleteMany({ where: { spaceId, userId } });
    await tx.idempotency.deleteMany({ where: { spaceId, actorId: userId } });
    await tx.$executeRaw`
      DELETE FROM outbox WHERE space_id = ${spaceId}::uuid AND topic = ${MAIL_TOPIC} AND body ->> 'userId' = ${userId}`;
    await forgetKettles(tx, spaceId, userId);
    // A name stands on a public page by its owner's own act only, so whoever published it is the one who is named.
    await tx.publicRecipe.updateMany({
      where: { sourceSpaceId: spaceId, publishedBy: userId, withdrawnAt: null },
      data: { authorName: NAMELESS_AUTHOR },
    });
  });
}

/** People call kettles after themselves. */
async function forgetKettles(tx: SpaceTransaction, spaceId: string, userId: string): Promise<void> {
  await tx.kettleContribution.deleteMany({ where: { spaceId, agreedBy: userId } });
  await tx.equipment.updateMany({
    where: { spaceId, ownerUserId: userId },
    data: { name: NAMELESS_KETTLE, archivedAt: new Date() },
  });
  await tx.$executeRaw`
    UPDATE brew SET equipment_snapshot = jsonb_set(equipment_snapshot, '{name}', to_jsonb(${NAMELESS_KETTLE}::text), false)
    WHERE space_id = ${spaceId}::uuid AND brewer_user_id = ${userId}::uuid`;
}

/** Takes back what a space showed to everybody, and what it gave to the statistics of other clubs. */
export async function withdrawEverything(spaceId: string, userId: string): Promise<void> {
  await inSpace(spaceId, userId, async (tx) => {
    const withdrawnAt = new Date();
    await tx.publicRecipe.updateMany({
      where: { sourceSpaceId: spaceId, withdrawnAt: null },
      data: { withdrawnAt, content: {}, credits: [], authorName: "" },
    });
    await tx.publicResult.updateMany({
      where: { sourceSpaceId: spaceId, withdrawnAt: null },
      data: { withdrawnAt, content: {}, title: "" },
    });
    await tx.statContrib.deleteMany({ where: { spaceId } });
    await tx.kettleContribution.deleteMany({ where: { spaceId } });
  });
}

/** Removes the bytes of the photos that somebody took, unless somebody else sent the very same picture. */
export async function forgetPhotos(spaceId: string, userId: string): Promise<void> {
  const rows = await inSpace(spaceId, userId, (tx) =>
    tx.attachment.findMany({ where: { spaceId }, select: { uploaderId: true, sha256: true, thumbSha256: true } }),
  );
  const keysOf = (ofRows: typeof rows): readonly string[] =>
    ofRows.flatMap(({ sha256, thumbSha256 }) =>
      [sha256, thumbSha256].flatMap((hash) => (hash === null ? [] : [Buffer.from(hash).toString("hex")])),
    );
  const kept = new Set(keysOf(rows.filter(({ uploaderId }) => uploaderId !== userId)));
  const blobs = blobsOf(spaceId);
  for (const key of keysOf(rows.filter(({ uploaderId }) => uploaderId === userId))) {
    if (!kept.has(key)) await blobs.delete(key);
  }
}
