import "server-only";
import { fermentationOf } from "@/lib/model/cellar/fermentation";
import { remindersOf, type Reminder } from "@/lib/model/cellar/reminders";
import { equipmentInput } from "@/lib/model/equipment";
import { inSpace } from "../db";
import type { Member } from "../session";
import { CELLAR_COLUMNS, toFermenting } from "./fermenting-brew";

/** Something that a fermentation of the space asks for by now. */
export interface DueInCellar {
  readonly brewId: string;
  readonly title: string;
  readonly kettle: string;
  readonly reminder: Reminder;
}

/** What is due in the fermenters of the space. */
export async function listDue({ spaceId, userId }: Member, now: Date): Promise<readonly DueInCellar[]> {
  const rows = await inSpace(spaceId, userId, (tx) =>
    tx.brew.findMany({
      where: { spaceId, state: "in the fermenter", droppedAt: null },
      select: CELLAR_COLUMNS,
      orderBy: [{ startedAt: "asc" }, { id: "asc" }],
    }),
  );
  return rows.flatMap((row) => {
    const brew = toFermenting(row);
    const { id: brewId, title, equipmentSnapshot } = row;
    const kettle = equipmentInput.parse(equipmentSnapshot).name;
    return remindersOf({ ...brew, fermentation: fermentationOf(brew), now: now.getTime() })
      .filter(({ state }) => state === "due")
      .map((reminder) => ({ brewId, title, kettle, reminder }));
  });
}
