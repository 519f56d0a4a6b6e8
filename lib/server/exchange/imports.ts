import "server-only";
import { roleMay } from "@/lib/model/roles";
import { displayNames } from "../accounts/names";
import { AppError } from "../app-error";
import { inSpace, type SpaceTransaction } from "../db";
import { requireAbility } from "../permissions";
import { isRecordId } from "../record-id";
import type { Member } from "../session";

const MOST_LISTED = 10;

/** One act of importing, with what came of it. */
export interface PastImport {
  readonly id: string;
  readonly at: Date;
  readonly byName: string;
  readonly recipes: readonly { readonly id: string; readonly title: string }[];
  readonly mayWithdraw: boolean;
}

/** The latest imports of the space that were not withdrawn. */
export async function listImports(member: Member): Promise<readonly PastImport[]> {
  const { spaceId, userId } = member;
  const rows = await inSpace(spaceId, userId, async (tx) => {
    const latest = await tx.recipeLeftover.groupBy({
      by: ["importId", "importedBy", "importedAt"],
      where: { spaceId, importId: { not: null }, revision: { recipe: { archivedAt: null } } },
      orderBy: { importedAt: "desc" },
      take: MOST_LISTED,
    });
    const leftovers = await tx.recipeLeftover.findMany({
      where: { spaceId, importId: { in: latest.flatMap((row) => row.importId ?? []) } },
      select: { importId: true, revision: { select: { recipe: { select: { id: true, title: true } } } } },
    });
    return latest.flatMap(({ importId, ...row }) => {
      // The type of the column does not know that the others were asked away.
      if (importId === null) return [];
      const own = leftovers.filter((leftover) => leftover.importId === importId);
      return [{ ...row, importId, recipes: own.map(({ revision }) => revision.recipe) }];
    });
  });
  const nameOf = await displayNames(
    member,
    rows.map((row) => row.importedBy),
  );
  return rows.map(({ importId, importedBy, importedAt, recipes }) => ({
    id: importId,
    at: importedAt,
    byName: nameOf(importedBy),
    recipes: [...recipes].sort((a, b) => a.title.localeCompare(b.title)),
    mayWithdraw: mayWithdraw(member, importedBy),
  }));
}

function mayWithdraw({ role, userId }: Member, importedBy: string): boolean {
  return roleMay(role, "organise") || (importedBy === userId && roleMay(role, "write recipes"));
}

/** Takes an import back, all of it or nothing: only while no recipe of it has been revised or brewed. */
export async function withdrawImport(member: Member, importId: string): Promise<void> {
  requireAbility(member, "write recipes");
  if (!isRecordId(importId)) throw new AppError("NOT_FOUND", "There is no such import here.");
  const { spaceId, userId } = member;
  await inSpace(spaceId, userId, async (tx) => {
    const leftovers = await tx.recipeLeftover.findMany({
      where: { spaceId, importId, revision: { recipe: { archivedAt: null } } },
      select: { recipeId: true, importedBy: true },
    });
    const [first] = leftovers;
    if (first === undefined) throw new AppError("NOT_FOUND", "There is no such import here.");
    if (!mayWithdraw(member, first.importedBy)) {
      throw new AppError("FORBIDDEN", "Only who imported this, and organisers, withdraw it.");
    }
    const ids = leftovers.map(({ recipeId }) => recipeId);
    await requireUnused(tx, spaceId, ids);
    // A revision that is saved at this moment moves head_rev, and then fewer rows are archived than there are recipes.
    const { count } = await tx.recipe.updateMany({
      where: { spaceId, id: { in: ids }, headRev: 1, archivedAt: null },
      data: { archivedAt: new Date() },
    });
    if (count !== ids.length) throw new AppError("CONFLICT", "A recipe of this import has just been revised.");
  });
}

async function requireUnused(tx: SpaceTransaction, spaceId: string, ids: string[]): Promise<void> {
  const used = await tx.recipe.findFirst({
    where: {
      spaceId,
      id: { in: ids },
      OR: [
        { headRev: { gt: 1 } },
        {
          revisions: {
            some: { OR: [{ brews: { some: {} } }, { sharedBrews: { some: {} } }, { adaptations: { some: {} } }] },
          },
        },
      ],
    },
    select: { title: true },
  });
  if (used !== null) {
    throw new AppError("CONFLICT", `“${used.title}” has been revised, adapted or brewed since; the import stays.`);
  }
}
