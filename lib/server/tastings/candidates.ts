import "server-only";
import { displayNames } from "../accounts/names";
import { inSpace } from "../db";
import type { Member } from "../session";
import { POURABLE } from "./entries";

/** A brew that could be entered: there is beer of it. */
export interface Candidate {
  readonly id: string;
  readonly title: string;
  readonly brewerName: string;
  readonly sharedBrewId: string | null;
  readonly sharedBrewTitle: string | null;
}

const MOST_SHOWN = 200;

/** The brews of the club that can be poured, the latest first, whether or not they are entered anywhere. */
export async function listPourable(member: Member): Promise<readonly Candidate[]> {
  const { spaceId, userId } = member;
  const rows = await inSpace(spaceId, userId, (tx) =>
    tx.brew.findMany({
      where: { spaceId, droppedAt: null, state: { in: [...POURABLE] } },
      select: {
        ...{ id: true, title: true, brewerUserId: true, sharedBrewId: true },
        sharedBrew: { select: { title: true } },
      },
      orderBy: [{ startedAt: { sort: "desc", nulls: "last" } }, { id: "asc" }],
      take: MOST_SHOWN,
    }),
  );
  const nameOf = await displayNames(
    member,
    rows.map(({ brewerUserId }) => brewerUserId),
  );
  return rows.map(({ brewerUserId, sharedBrew, ...brew }) => ({
    ...brew,
    brewerName: nameOf(brewerUserId),
    sharedBrewTitle: sharedBrew?.title ?? null,
  }));
}
