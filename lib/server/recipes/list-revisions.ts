import "server-only";
import type { RevisionSummary } from "@/lib/model/recipe-content";
import { displayNames } from "../accounts/names";
import { inSpace } from "../db";
import { isRecordId } from "../record-id";
import type { Member } from "../session";

/** The revisions of a recipe, the newest first; none where there is no such recipe. */
export async function listRevisions({ spaceId, userId }: Member, id: string): Promise<readonly RevisionSummary[]> {
  if (!isRecordId(id)) return [];
  const rows = await inSpace(spaceId, userId, (tx) =>
    tx.recipeRevision.findMany({
      where: { spaceId, recipeId: id },
      select: { rev: true, message: true, authorId: true, createdAt: true },
      orderBy: { rev: "desc" },
    }),
  );
  const nameOf = await displayNames(
    { spaceId, userId },
    rows.map((row) => row.authorId),
  );
  return rows.map(({ authorId, message, ...row }) => ({
    ...row,
    message: message ?? "",
    authorName: nameOf(authorId),
  }));
}
