import "server-only";
import { projectLog } from "@/lib/model/log/project-log";
import type { LoggedReading } from "@/lib/model/log/logged-readings";
import { inSpace } from "../db";
import { toEntries } from "../log/entries";
import { EVENT_COLUMNS } from "../log/event-row";
import type { Member } from "../session";

/** The readings of one brew with what their corrections came to. */
export async function readingsOf({ spaceId, userId }: Member, brewId: string): Promise<readonly LoggedReading[]> {
  const rows = await inSpace(spaceId, userId, (tx) =>
    tx.brewEvent.findMany({ where: { spaceId, brewId }, select: EVENT_COLUMNS }),
  );
  // No name is shown, so none is looked up.
  return projectLog(toEntries(rows, () => "")).readings;
}
