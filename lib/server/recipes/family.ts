import "server-only";
import type { Family, Relative, ShownRelative } from "@/lib/model/family";
import { displayNames } from "../accounts/names";
import { inSpace, type SpaceTransaction } from "../db";
import { isRecordId } from "../record-id";
import { proveEveryMembership } from "../proof";
import type { Member } from "../session";

interface Link {
  readonly spaceId: string;
  readonly recipeId: string;
  readonly originSpaceId: string;
  readonly originRecipeId: string;
  readonly originRev: number;
}

/**
 * The family of a recipe: the first ancestor, its copies and theirs. Recipes of spaces that the reader does not belong to
 * are counted, and stand in the tree without a word where something that the reader sees came of them.
 */
export async function findFamily(member: Member, id: string): Promise<Family | null> {
  if (!isRecordId(id)) return null;
  const { spaceId, userId } = member;
  const links = await inSpace(spaceId, userId, (tx) => linksOf(tx, spaceId, id));
  if (links === null) return null;
  const shown = await readShown(member, [
    keyOf(spaceId, id),
    ...links.flatMap((link) => [childOf(link), parentOf(link)]),
  ]);
  return growTree(links, keyOf(spaceId, id), shown);
}

async function linksOf(tx: SpaceTransaction, spaceId: string, id: string): Promise<readonly Link[] | null> {
  const recipe = await tx.recipe.findUnique({
    where: { spaceId_id: { spaceId, id }, archivedAt: null },
    select: { rootId: true },
  });
  if (recipe === null) return null;
  return tx.recipeLineage.findMany({
    where: { recipeRoot: recipe.rootId },
    select: { spaceId: true, recipeId: true, originSpaceId: true, originRecipeId: true, originRev: true },
    orderBy: [{ copiedAt: "asc" }, { recipeId: "asc" }],
  });
}

const keyOf = (spaceId: string, recipeId: string): string => `${spaceId}/${recipeId}`;
const childOf = (link: Link): string => keyOf(link.spaceId, link.recipeId);
const parentOf = (link: Link): string => keyOf(link.originSpaceId, link.originRecipeId);

/** What the reader may see of these recipes, each read in its own space. */
async function readShown(member: Member, keys: readonly string[]): Promise<ReadonlyMap<string, ShownRelative>> {
  const idsOf = grouped(
    [...new Set(keys)].map((key) => key.split("/")),
    ([spaceId = ""]) => spaceId,
  );
  const spaces = (await proveEveryMembership(member)).filter(({ spaceId }) => idsOf.has(spaceId));
  const read = await Promise.all(
    spaces.map((space) =>
      readHeads(
        space,
        (idsOf.get(space.spaceId) ?? []).flatMap(([, id]) => id ?? []),
      ),
    ),
  );
  return new Map(read.flat().map((relative) => [relative.key, relative.shown]));
}

async function readHeads(
  { spaceId, spaceSlug, spaceName, userId }: Member,
  ids: readonly string[],
): Promise<readonly { readonly key: string; readonly shown: ShownRelative }[]> {
  const rows = await inSpace(
    spaceId,
    userId,
    (tx) =>
      tx.$queryRaw<readonly { id: string; title: string; headRev: number; authorId: string }[]>`
      SELECT r.id, r.title, r.head_rev AS "headRev", v.author_id AS "authorId"
      FROM recipe r JOIN recipe_revision v ON v.space_id = r.space_id AND v.recipe_id = r.id AND v.rev = r.head_rev
      WHERE r.space_id = ${spaceId}::uuid AND r.id = ANY (${ids}::uuid[]) AND r.archived_at IS NULL`,
  );
  const nameOf = await displayNames(
    { spaceId, userId },
    rows.map((row) => row.authorId),
  );
  return rows.map(({ id, title, headRev, authorId }) => ({
    key: keyOf(spaceId, id),
    shown: { spaceSlug, spaceName, recipeId: id, title, headRev, authorName: nameOf(authorId) },
  }));
}

function grouped<T>(list: readonly T[], keyOfOne: (one: T) => string): ReadonlyMap<string, readonly T[]> {
  const groups = new Map<string, T[]>();
  for (const one of list) groups.set(keyOfOne(one), [...(groups.get(keyOfOne(one)) ?? []), one]);
  return groups;
}

/** The tree from the one recipe that is nobody's copy; a recipe without relatives is a family of one. */
function growTree(links: readonly Link[], own: string, shown: ReadonlyMap<string, ShownRelative>): Family {
  const children = grouped(links, parentOf);
  const copies = new Set(links.map(childOf));
  const root = links.map(parentOf).find((key) => !copies.has(key)) ?? own;
  const keys = new Set([own, ...links.flatMap((link) => [childOf(link), parentOf(link)])]);
  let numbered = 0;

  function grow(key: string, ofRev: number | null): Relative {
    const grown = (children.get(key) ?? []).map((link) => grow(childOf(link), shown.has(key) ? link.originRev : null));
    const inSight = grown.filter((relative) => relative.shown !== null || relative.copies.length > 0);
    const hidden = grown.filter((relative) => !inSight.includes(relative));
    return {
      // Not its ids, which a page would hand on to the browser.
      key: String(numbered++),
      ofRev,
      shown: shown.get(key) ?? null,
      copies: inSight,
      hiddenCopies: hidden.reduce((sum, relative) => sum + 1 + relative.hiddenCopies, 0),
    };
  }

  return { root: grow(root, null), size: keys.size, hidden: keys.size - shown.size };
}
