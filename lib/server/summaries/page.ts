import "server-only";
import type { BrewsPage, BrewsQuery } from "@/lib/model/summary/brews-page";
import { inSpace } from "../db";
import type { Member } from "../session";
import { listSummaries } from "./reads";

const FIRST = "00000000-0000-0000-0000-000000000000";

/** A page of the brews of a club for programs; of one brew alone where the key is for one. */
export async function listBrewPage(
  member: Member,
  { after = FIRST, limit }: BrewsQuery,
  only: string | null,
): Promise<BrewsPage> {
  const { spaceId, userId } = member;
  const found = await inSpace(spaceId, userId, (tx) =>
    tx.brew.findMany({
      where: { spaceId, droppedAt: null, id: { gt: after, ...(only === null ? {} : { equals: only }) } },
      select: { id: true },
      orderBy: { id: "asc" },
      // One more than is shown, which tells whether there is another page.
      take: limit + 1,
    }),
  );
  const ids = found.slice(0, limit).map(({ id }) => id);
  const brews = new Map((await listSummaries(member, { ids })).map((brew) => [brew.id, brew]));
  return {
    brews: ids.flatMap((id) => {
      const brew = brews.get(id);
      if (brew === undefined) return [];
      return [
        {
          ...{ id, beer: brew.title, recipe: brew.recipeId, revision: brew.recipeRev, sharedBrew: brew.sharedBrewId },
          ...{ brewer: brew.brewerName, kettle: brew.equipmentName, kettleKind: brew.equipmentKind, state: brew.state },
          begun: brew.startedAt?.toISOString() ?? null,
          figures: brew.summary?.figures ?? null,
        },
      ];
    }),
    next: found.length > limit ? (ids.at(-1) ?? null) : null,
  };
}
