import "server-only";
import { exportReport, type ExportReport } from "@/lib/model/exchange/export-report";
import { recipeContent } from "@/lib/model/recipe-content";
import { inSpace } from "../db";
import type { Member } from "../session";
import { storedLeftover } from "./kept-leftover";

/** Of every recipe that came out of a file, what of that file goes back into an export of its newest revision. */
export async function listExportReports({ spaceId, userId }: Member): Promise<ReadonlyMap<string, ExportReport>> {
  const { recipes, revisions, leftovers } = await inSpace(spaceId, userId, async (tx) => {
    const kept = await tx.recipeLeftover.findMany({
      where: { spaceId, revision: { recipe: { archivedAt: null } } },
      select: { recipeId: true, format: true, version: true, leftover: true },
      orderBy: { rev: "asc" },
    });
    const ids = [...new Set(kept.map(({ recipeId }) => recipeId))];
    const heads = await tx.recipe.findMany({
      where: { spaceId, id: { in: ids } },
      select: { id: true, title: true, headRev: true },
    });
    const newest = await tx.recipeRevision.findMany({
      where: { spaceId, OR: heads.map(({ id, headRev }) => ({ recipeId: id, rev: headRev })) },
      select: { recipeId: true, content: true },
    });
    return { recipes: heads, revisions: newest, leftovers: kept };
  });
  // The latest of several is the one that holds.
  const leftoverOf = new Map(leftovers.map((row) => [row.recipeId, row]));
  const contentOf = new Map(revisions.map((row) => [row.recipeId, row.content]));
  return new Map(
    recipes.flatMap(({ id, title }): (readonly [string, ExportReport])[] => {
      const kept = leftoverOf.get(id);
      const content = contentOf.get(id);
      if (kept === undefined || content === undefined) return [];
      return [[id, exportReport({ title, content: recipeContent.parse(content) }, storedLeftover(kept))]];
    }),
  );
}
