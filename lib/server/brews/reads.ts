import "server-only";
import type { Brew, BrewSummary } from "@/lib/model/brew";
import { displayNames } from "../accounts/names";
import { inSpace } from "../db";
import { eventsRead } from "../log/dense-logs";
import { EVENT_COLUMNS } from "../log/event-row";
import { isRecordId } from "../record-id";
import type { Member } from "../session";
import { BREW_COLUMNS, peopleOf, SUMMARY_COLUMNS, toBrew, toSummary } from "./from-row";

/** The batches of the space: those not begun first, then the latest begun; none that was dropped. */
export async function listBrews({ spaceId, userId }: Member): Promise<readonly BrewSummary[]> {
  const rows = await inSpace(spaceId, userId, (tx) =>
    tx.brew.findMany({
      where: { spaceId, droppedAt: null },
      select: SUMMARY_COLUMNS,
      orderBy: [{ startedAt: { sort: "desc", nulls: "first" } }, { id: "asc" }],
    }),
  );
  const nameOf = await displayNames(
    { spaceId, userId },
    rows.map((row) => row.brewerUserId),
  );
  return rows.map((row) => toSummary(row, nameOf));
}

export async function findBrew(member: Member, id: string): Promise<Brew | null> {
  if (!isRecordId(id)) return null;
  const { spaceId, userId } = member;
  const found = await inSpace(spaceId, userId, async (tx) => {
    const { where, leftOut } = await eventsRead(tx, spaceId, [id]);
    const row = await tx.brew.findUnique({
      where: { spaceId_id: { spaceId, id } },
      select: { ...BREW_COLUMNS, events: { select: EVENT_COLUMNS, where } },
    });
    return row === null ? null : { ...row, leftOut: leftOut.get(id) ?? 0 };
  });
  return found === null ? null : toBrew(member, found, await displayNames(member, peopleOf([found])));
}
