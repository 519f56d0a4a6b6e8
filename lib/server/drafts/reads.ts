import "server-only";
import { keptDraft, type DraftSummary, type RecipeDraft } from "@/lib/model/recipe-draft";
import { displayNames } from "../accounts/names";
import { inSpace, type SpaceTransaction } from "../db";
import { isRecordId } from "../record-id";
import type { Member } from "../session";

/** The member's own draft of a recipe, or of a new one; nobody reads another's. */
export async function findDraft(member: Member, id: string): Promise<RecipeDraft | null> {
  if (!isRecordId(id)) return null;
  return inSpace(member.spaceId, member.userId, (tx) => ownDraft(tx, member, id));
}

/** The same within a transaction. */
export async function ownDraft(
  tx: SpaceTransaction,
  { spaceId, userId }: Member,
  id: string,
): Promise<RecipeDraft | null> {
  const row = await tx.recipeDraft.findUnique({ where: { spaceId_userId_id: { spaceId, userId, id } } });
  if (row === null) return null;
  const { baseRev, lockVersion, begunAt, savedAt, content } = row;
  return { id, baseRev, lockVersion, begunAt, savedAt, kept: keptDraft.parse(content) };
}

/** The drafts that a member sees: all of their own, and that others are writing on a recipe, of one or of all. */
export async function listDrafts(member: Member, recipeId: string | null): Promise<readonly DraftSummary[]> {
  const { spaceId, userId } = member;
  if (recipeId !== null && !isRecordId(recipeId)) return [];
  const rows = await inSpace(spaceId, userId, (tx) =>
    tx.recipeDraft.findMany({
      where: recipeId === null ? { spaceId, OR: [{ userId }, { NOT: { recipeId: null } }] } : { spaceId, recipeId },
      select: { id: true, recipeId: true, title: true, userId: true, begunAt: true, savedAt: true },
      orderBy: { savedAt: "desc" },
    }),
  );
  const nameOf = await displayNames(
    { spaceId, userId },
    rows.map((row) => row.userId),
  );
  return rows.map(({ userId: writer, ...row }) => ({ ...row, writerName: nameOf(writer), isOwn: writer === userId }));
}
