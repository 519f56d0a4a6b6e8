import "server-only";
import { SHARED_BREW_STATES, type SharedBrew, type SharedBrewSummary } from "@/lib/model/shared-brew";
import { displayNames } from "../accounts/names";
import { BREW_COLUMNS, peopleOf, toBrew } from "../brews/from-row";
import { inSpace } from "../db";
import { isRecordId } from "../record-id";
import type { Member } from "../session";
import { storedWord } from "../stored-word";

const COLUMNS = { id: true, title: true, recipeId: true, recipeRev: true, state: true, plannedAt: true } as const;

/** The shared brews of the space, the latest planned day first. */
export async function listSharedBrews({ spaceId, userId }: Member): Promise<readonly SharedBrewSummary[]> {
  const rows = await inSpace(spaceId, userId, (tx) =>
    tx.sharedBrew.findMany({
      where: { spaceId },
      select: COLUMNS,
      orderBy: [{ plannedAt: { sort: "desc", nulls: "first" } }, { id: "asc" }],
    }),
  );
  return rows.map(withState);
}

/** A shared brew with everybody's sheet and readings. */
export async function findSharedBrew(member: Member, id: string): Promise<SharedBrew | null> {
  if (!isRecordId(id)) return null;
  const { spaceId, userId } = member;
  const found = await inSpace(spaceId, userId, async (tx) => {
    const shared = await tx.sharedBrew.findUnique({ where: { spaceId_id: { spaceId, id } }, select: COLUMNS });
    if (shared === null) return null;
    const brews = await tx.brew.findMany({
      where: { spaceId, sharedBrewId: id },
      select: BREW_COLUMNS,
      orderBy: { id: "asc" },
    });
    return { shared, brews };
  });
  if (found === null) return null;
  const nameOf = await displayNames(peopleOf(found.brews));
  return { ...withState(found.shared), brews: found.brews.map((row) => toBrew(member, row, nameOf)) };
}

function withState<R extends { readonly state: string }>(row: R): Omit<R, "state"> & Pick<SharedBrewSummary, "state"> {
  return { ...row, state: storedWord(SHARED_BREW_STATES, row.state) };
}
