import "server-only";
import { NOBODY } from "../nobody";
import { fermentationOf } from "@/lib/model/cellar/fermentation";
import { remindersOf, type Reminder, type ReminderKind } from "@/lib/model/cellar/reminders";
import { equipmentInput } from "@/lib/model/equipment";
import { acrossServers, directory, inSpace, type SpaceTransaction } from "../db";
import { tell } from "../notices/writes";
import { CELLAR_COLUMNS, toFermenting } from "./fermenting-brew";

/** Tells the brewers of every space what their fermentations ask for by now, each thing once. Says how much was told. */
export async function remindBrewers(now: Date): Promise<number> {
  const fermenting = await acrossServers(
    (client) => client.$queryRaw<{ id: string }[]>`SELECT id::text FROM spaces_with_fermentations() AS id`,
  );
  const ids = fermenting.map(({ id }) => id);
  const spaces = await directory.space.findMany({ where: { id: { in: ids }, deletedAt: null }, select: { id: true } });
  let told = 0;
  // One space after the other: row-level security shows one at a time, and there is no hurry.
  for (const { id } of spaces) told += await remindIn(id, now);
  return told;
}

/** The same for one space. */
export async function remindIn(spaceId: string, now: Date): Promise<number> {
  return inSpace(spaceId, NOBODY, async (tx) => {
    const fermenting = await tx.brew.findMany({
      where: { spaceId, state: "in the fermenter", droppedAt: null },
      select: { ...CELLAR_COLUMNS, reminders: { select: { kind: true } } },
    });
    let told = 0;
    for (const row of fermenting) {
      const brew = toFermenting(row);
      const due = remindersOf({ ...brew, fermentation: fermentationOf(brew), now: now.getTime() }).filter(
        ({ kind, state }) => state === "due" && !row.reminders.some((each) => each.kind === kind),
      );
      for (const reminder of due) told += (await tellOnce(tx, spaceId, row, reminder)) ? 1 : 0;
    }
    return told;
  });
}

interface Whose {
  readonly id: string;
  readonly title: string;
  readonly brewerUserId: string;
  readonly equipmentSnapshot: unknown;
  readonly collaborators: readonly { readonly userId: string }[];
}

async function tellOnce(tx: SpaceTransaction, spaceId: string, brew: Whose, reminder: Reminder): Promise<boolean> {
  // Of two processes that look at the same moment, the database lets one write the row.
  const { count } = await tx.brewReminder.createMany({
    data: [{ spaceId, brewId: brew.id, kind: reminder.kind }],
    skipDuplicates: true,
  });
  if (count === 0) return false;
  const people = [brew.brewerUserId, ...brew.collaborators.map(({ userId }) => userId)];
  const kettle = equipmentInput.parse(brew.equipmentSnapshot).name;
  const payload = { brewId: brew.id, title: brew.title, kettle, note: noteOf(reminder) };
  await tell(tx, { spaceId }, people, { kind: reminder.kind, payload });
  return true;
}

const NOTES: Readonly<Record<ReminderKind, (reminder: Reminder) => string>> = {
  "dry hop": ({ hops }) =>
    hops.map(({ name, grams }) => `${name}, ${String(Number(grams.toPrecision(3)))} g`).join("; "),
  "diacetyl rest": () => "Let it warm by some 3 to 5 K, and keep it so for two days or three.",
};

function noteOf(reminder: Reminder): string {
  return NOTES[reminder.kind](reminder);
}
