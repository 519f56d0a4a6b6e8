import "server-only";
import { leftoverEntries, type LeftoverEntry } from "@/lib/model/exchange/leftover";
import { EXCHANGE_FORMATS, type ExchangeFormat } from "@/lib/model/exchange/read-recipes";
import { toJson, type SpaceTransaction } from "../db";
import { isRecordId } from "../record-id";
import type { Member } from "../session";
import { storedWord } from "../stored-word";

/** What a file said and a recipe has no place for, with the standard and version that the file was of. */
export interface KeptLeftover {
  readonly format: ExchangeFormat;
  readonly version: string;
  readonly entries: readonly LeftoverEntry[];
}

export function storedLeftover(row: {
  readonly format: string;
  readonly version: string;
  readonly leftover: unknown;
}): KeptLeftover {
  return {
    format: storedWord(EXCHANGE_FORMATS, row.format),
    version: row.version,
    entries: leftoverEntries.parse(row.leftover),
  };
}

/** What holds for a revision. Revisions of a recipe follow one another, so the nearest ancestor is the nearest before. */
export async function leftoverAt(
  tx: SpaceTransaction,
  { spaceId, recipeId, rev }: { readonly spaceId: string; readonly recipeId: string; readonly rev: number },
): Promise<KeptLeftover | null> {
  const row = await tx.recipeLeftover.findFirst({
    where: { spaceId, recipeId, rev: { lte: rev } },
    select: { format: true, version: true, leftover: true },
    orderBy: { rev: "desc" },
  });
  return row === null ? null : storedLeftover(row);
}

/** Keeps it with the first revision of a copy. A copy is no act of importing, so it is not withdrawn with one. */
export async function insertLeftover(
  tx: SpaceTransaction,
  { spaceId, userId }: Pick<Member, "spaceId" | "userId">,
  { recipeId, kept }: { readonly recipeId: string; readonly kept: KeptLeftover },
): Promise<void> {
  const { format, version, entries } = kept;
  await tx.recipeLeftover.create({
    data: { spaceId, recipeId, rev: 1, importId: null, format, version, leftover: toJson(entries), importedBy: userId },
  });
}

/** Carries what holds for the newest revision of one recipe of the space over to another, if there is any. */
export async function carryLeftover(
  tx: SpaceTransaction,
  member: Pick<Member, "spaceId" | "userId">,
  { from, to }: { readonly from: string; readonly to: string },
): Promise<void> {
  if (!isRecordId(from)) return;
  const source = await tx.recipe.findUnique({
    where: { spaceId_id: { spaceId: member.spaceId, id: from }, archivedAt: null },
    select: { headRev: true },
  });
  if (source === null) return;
  const kept = await leftoverAt(tx, { spaceId: member.spaceId, recipeId: from, rev: source.headRev });
  if (kept !== null) await insertLeftover(tx, member, { recipeId: to, kept });
}
