import "server-only";
import { storedCredits } from "@/lib/model/lineage";
import { isPublicAddress, type PublicationSummary, type PublishedRecipe } from "@/lib/model/publication";
import { recipeContent } from "@/lib/model/recipe-content";
import { inSpace, readPublic } from "../db";
import { isRecordId } from "../record-id";
import type { Member } from "../session";

/** What everybody reads at an address; null where nothing is published, or not any more. */
export async function findPublished(address: string): Promise<PublishedRecipe | null> {
  if (!isPublicAddress(address)) return null;
  return readPublic(async (tx) => {
    const row = await tx.publicRecipe.findUnique({ where: { address, withdrawnAt: null } });
    if (row === null) return null;
    const newer = await tx.publicRecipe.findFirst({
      where: {
        sourceSpaceId: row.sourceSpaceId,
        recipeId: row.recipeId,
        rev: { gt: row.rev },
        withdrawnAt: null,
      },
      select: { address: true },
      orderBy: { rev: "desc" },
    });
    const { title, rev, authorName, publishedAt } = row;
    return {
      address,
      title,
      rev,
      authorName,
      publishedAt,
      credits: storedCredits.parse(row.credits),
      content: recipeContent.parse(row.content),
      newerAddress: newer?.address ?? null,
    };
  });
}

/** The revisions of a recipe that are or were public, the newest first. */
export async function listPublications(
  { spaceId, userId }: Member,
  recipeId: string,
): Promise<readonly PublicationSummary[]> {
  if (!isRecordId(recipeId)) return [];
  return inSpace(spaceId, userId, (tx) =>
    tx.publicRecipe.findMany({
      where: { sourceSpaceId: spaceId, recipeId },
      select: { rev: true, address: true, authorName: true, publishedAt: true, withdrawnAt: true },
      orderBy: { rev: "desc" },
    }),
  );
}

/** Whether a revision is the reader's own, so that their name on it is theirs to give. */
export async function isAuthorOf({ spaceId, userId }: Member, recipeId: string, rev: number): Promise<boolean> {
  const own = await inSpace(spaceId, userId, (tx) =>
    tx.recipeRevision.count({ where: { spaceId, recipeId, rev, authorId: userId } }),
  );
  return own === 1;
}
