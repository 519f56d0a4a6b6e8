import { randomUUID } from "node:crypto";
import { z } from "zod";
import type { RecipeContent } from "@/lib/model/recipe-content";
import { inSpace } from "@/lib/server/db";
import type { Member } from "@/lib/server/session";
import { ask, returned } from "./ask";
import { NamedWrites, type NamedRow } from "./named-writes";
import type { Setting, Verdict, Writer } from "./writer";

interface Author {
  readonly member: Member;
  readonly reference: string;
  readonly content: RecipeContent;
}

/** New recipes, each tried once under a title of its own. */
export function recipeWriter(setting: Setting, { member, reference, content }: Author): Writer {
  const writes = new NamedWrites();
  const { spaceId, userId } = member;
  return {
    kind: "new recipe",
    write: () =>
      writes.write(async (title) => {
        const recipe = { space: setting.slug, draftId: randomUUID(), title, content, message: "" };
        const asked = setting.actionOf("app/s/[space]/recipes/new/actions.ts", "createRecipeAction", recipe);
        const path = `/s/${setting.slug}/recipes/new`;
        const headers = { ...asked.headers, ...setting.cookieOf(reference), origin: setting.origin };
        const reply = await ask(setting.origin, { ...asked, path, headers });
        return reply?.headers.get("x-action-redirect")?.includes("/recipes/") ?? false;
      }),
    judge: () =>
      writes.judge((titles) =>
        inSpace(
          spaceId,
          userId,
          (tx) => tx.$queryRaw<NamedRow[]>`
            SELECT r.title AS name, count(*)::int AS count, bool_and(EXISTS (
                SELECT FROM recipe_revision v WHERE v.space_id = r.space_id AND v.recipe_id = r.id AND v.rev = r.head_rev)
              AND EXISTS (SELECT FROM search_document d
                WHERE d.space_id = r.space_id AND d.id = r.id AND d.calc_version IS NOT NULL)) AS whole
            FROM recipe r WHERE r.space_id = ${spaceId}::uuid AND r.title = ANY (${titles}) GROUP BY r.title`,
        ),
      ),
  };
}

const saved = z.object({ ok: z.literal(true), rev: z.number() });
const stale = z.object({ ok: z.literal(false), newer: z.object({ rev: z.number() }) });

/** One revision after the other of one recipe; who is told that there is a newer one goes on from that. */
export function revisionWriter(setting: Setting, a: Author & { readonly recipeId: string }): Writer {
  const acknowledged = new Map<number, string>();
  let baseRev = 1;
  return {
    kind: "revision",
    write: async () => {
      const notes = `Tried ${randomUUID()}`;
      const content = { ...a.content, notes };
      const revision = { space: setting.slug, id: a.recipeId, baseRev, title: "Revised", content, message: "" };
      const asked = setting.actionOf("app/s/[space]/recipes/[recipe]/actions.ts", "saveRevisionAction", revision);
      const path = `/s/${setting.slug}/recipes/${a.recipeId}`;
      const headers = { ...asked.headers, ...setting.cookieOf(a.reference), origin: setting.origin };
      const answer = returned(await ask(setting.origin, { ...asked, path, headers }))?.data;
      const newer = stale.safeParse(answer);
      if (newer.success) baseRev = newer.data.newer.rev;
      const kept = saved.safeParse(answer);
      if (!kept.success) return false;
      baseRev = kept.data.rev;
      acknowledged.set(baseRev, notes);
      return true;
    },
    judge: () => judgeRevisions(a.member, a.recipeId, acknowledged),
  };
}

async function judgeRevisions(
  { spaceId, userId }: Member,
  recipeId: string,
  acknowledged: ReadonlyMap<number, string>,
): Promise<Verdict> {
  const { rows, head } = await inSpace(spaceId, userId, async (tx) => ({
    rows: await tx.$queryRaw<{ rev: number; notes: string }[]>`
      SELECT rev, content ->> 'notes' AS notes FROM recipe_revision
      WHERE space_id = ${spaceId}::uuid AND recipe_id = ${recipeId}::uuid ORDER BY rev`,
    head: await tx.recipe.findUnique({
      where: { spaceId_id: { spaceId, id: recipeId } },
      select: { headRev: true },
    }),
  }));
  const byRev = new Map(rows.map(({ rev, notes }) => [rev, notes]));
  const gaps = rows.filter(({ rev }, at) => rev !== at + 1).length;
  return {
    acknowledged: acknowledged.size,
    lost: [...acknowledged].filter(([rev, notes]) => byRev.get(rev) !== notes).length,
    doubled: rows.length - new Set(rows.map(({ notes }) => notes)).size,
    // Where a control loses the recipe as well, nothing of it is there in part.
    halfWritten: gaps + ((head?.headRev ?? 0) === rows.length ? 0 : 1),
  };
}
