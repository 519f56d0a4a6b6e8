import "server-only";
import type { RecipeSummary } from "@/lib/model/recipe-content";
import { RECIPE_PAGE_SIZE, type RecipeOrder, type RecipePage } from "@/lib/model/recipe-list";
import { displayNames } from "../accounts/names";
import { inSpace, type SpaceTransaction } from "../db";
import type { Member } from "../session";

interface Row {
  readonly id: string;
  readonly title: string;
  readonly headRev: number;
  readonly authorId: string;
  readonly changedAt: Date;
}

/** One page of the recipes of the space; it is sorted and cut where they are kept. */
export async function listRecipePage(member: Member, order: RecipeOrder): Promise<RecipePage> {
  const { spaceId, userId } = member;
  const { rows, total } = await inSpace(spaceId, userId, async (tx) => ({
    total: await tx.recipe.count({ where: { spaceId, archivedAt: null } }),
    rows: await readPage(tx, spaceId, order, RECIPE_PAGE_SIZE),
  }));
  return { recipes: await withNames(member, rows), total };
}

const MOST_CHOICES = 500;

/** The recipes that changed last, as many as somebody still chooses from; lists of all of them come in pages. */
export async function listRecipes(member: Member): Promise<readonly RecipeSummary[]> {
  const { spaceId, userId } = member;
  const latest: RecipeOrder = { sort: "changed", direction: "descending", page: 1 };
  return withNames(member, await inSpace(spaceId, userId, (tx) => readPage(tx, spaceId, latest, MOST_CHOICES)));
}

function readPage(tx: SpaceTransaction, spaceId: string, order: RecipeOrder, size: number): Promise<readonly Row[]> {
  const { sort, direction, page } = order;
  const down = direction === "descending";
  // Each order is spelt out, because a direction cannot be a parameter; those not asked for sort nothing.
  return tx.$queryRaw<readonly Row[]>`
    SELECT r.id, r.title, r.head_rev AS "headRev", v.author_id AS "authorId", v.created_at AS "changedAt"
    FROM recipe r
    JOIN recipe_revision v ON v.space_id = r.space_id AND v.recipe_id = r.id AND v.rev = r.head_rev
    WHERE r.space_id = ${spaceId}::uuid AND r.archived_at IS NULL
    ORDER BY
      CASE WHEN ${sort === "title" && !down} THEN lower(r.title) END ASC,
      CASE WHEN ${sort === "title" && down} THEN lower(r.title) END DESC,
      CASE WHEN ${sort === "revision" && !down} THEN r.head_rev END ASC,
      CASE WHEN ${sort === "revision" && down} THEN r.head_rev END DESC,
      CASE WHEN ${sort === "changed" && !down} THEN v.created_at END ASC,
      v.created_at DESC, r.id
    LIMIT ${size} OFFSET ${(page - 1) * size}`;
}

async function withNames(member: Member, rows: readonly Row[]): Promise<readonly RecipeSummary[]> {
  const nameOf = await displayNames(
    member,
    rows.map((row) => row.authorId),
  );
  return rows.map(({ authorId, ...row }) => ({ ...row, authorName: nameOf(authorId) }));
}
