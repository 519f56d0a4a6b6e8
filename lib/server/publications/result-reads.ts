import "server-only";
import { isPublicAddress } from "@/lib/model/publication";
import { resultContent, type PublishedResult, type ResultSummary } from "@/lib/model/published-result";
import { inSpace, readPublic, type SpaceTransaction } from "../db";
import { isRecordId } from "../record-id";
import type { Member } from "../session";

/** What everybody reads at the address of a result; null where nothing is published, or not any more. */
export async function findPublishedResult(address: string): Promise<PublishedResult | null> {
  if (!isPublicAddress(address)) return null;
  return readPublic(async (tx) => {
    const row = await tx.publicResult.findUnique({ where: { address, withdrawnAt: null } });
    if (row === null) return null;
    const { title, publishedAt, sourceSpaceId, sharedBrewId, recipeId } = row;
    const content = resultContent.parse(row.content);
    const revs = [...new Set(content.columns.map(({ rev }) => rev))].sort((a, b) => a - b);
    const newer = await tx.publicResult.findFirst({
      where: { sourceSpaceId, sharedBrewId, withdrawnAt: null, publishedAt: { gt: publishedAt } },
      select: { address: true },
      orderBy: { publishedAt: "desc" },
    });
    return {
      ...content,
      address,
      title,
      publishedAt,
      revisions: await addressesOf(tx, { sourceSpaceId, recipeId, revs }),
      newerAddress: newer?.address ?? null,
    };
  });
}

async function addressesOf(
  tx: SpaceTransaction,
  a: { readonly sourceSpaceId: string; readonly recipeId: string; readonly revs: readonly number[] },
): Promise<PublishedResult["revisions"]> {
  const { sourceSpaceId, recipeId, revs } = a;
  const published = await tx.publicRecipe.findMany({
    where: { sourceSpaceId, recipeId, rev: { in: [...revs] }, withdrawnAt: null },
    select: { rev: true, address: true },
  });
  return revs.map((rev) => ({ rev, address: published.find((row) => row.rev === rev)?.address ?? null }));
}

/** The results of a shared brew that are or were public, the newest first. */
export async function listResults(
  { spaceId, userId }: Member,
  sharedBrewId: string,
): Promise<readonly ResultSummary[]> {
  if (!isRecordId(sharedBrewId)) return [];
  return inSpace(spaceId, userId, (tx) =>
    tx.publicResult.findMany({
      where: { sourceSpaceId: spaceId, sharedBrewId },
      select: { address: true, publishedAt: true, withdrawnAt: true },
      orderBy: { publishedAt: "desc" },
    }),
  );
}
