import { mergeEntries } from "@/lib/model/log/log-entry";
import type { JudgeSheet, TastingEntry } from "@/lib/model/tasting/judge-sheet";
import type { TastingEvent } from "@/lib/model/tasting/sheet-event";
import { STRICT, type Waiting } from "./queue";
import type { TastingDatabase } from "./tasting-database";

/** What this device knows of a tasting. */
export interface KeptTasting {
  readonly sheet: JudgeSheet | null;
  /** What the judge wrote, that of the server and that of this device. */
  readonly entries: readonly TastingEntry[];
  /** What is on this device only. */
  readonly waiting: readonly Waiting<TastingEvent>[];
}

/** What was received longer ago than this before a reading is in what was read. */
const LONGEST_DELIVERY_MS = 30_000;

const sheetKey = (space: string, tastingId: string): string => `${space}/${tastingId}`;

export async function readTasting(database: TastingDatabase, space: string, tastingId: string): Promise<KeptTasting> {
  const transaction = database.transaction(["sheets", "waiting", "acknowledged"]);
  const [kept, everyones, acknowledged] = await Promise.all([
    transaction.objectStore("sheets").get(sheetKey(space, tastingId)),
    transaction.objectStore("waiting").index("tasting").getAll(tastingId),
    transaction.objectStore("acknowledged").index("tasting").getAll(tastingId),
  ]);
  // A judge who lends the phone to another does not show what he or she wrote.
  const mine = <T>(all: readonly T[], whose: (each: T) => string): readonly T[] =>
    kept === undefined ? [] : all.filter((each) => whose(each) === kept.userId);
  const waiting = mine(everyones, ({ userId }) => userId);
  const own = waiting.map(({ event, userId, userName }): TastingEntry => ({
    event,
    actorId: userId,
    actorName: userName,
    receivedAt: null,
    clockOffsetMs: null,
  }));
  const safe = mine(acknowledged, ({ entry }) => entry.actorId).map(({ entry }) => entry);
  return {
    sheet: kept?.sheet ?? null,
    entries: mergeEntries([...(kept?.sheet.entries ?? []), ...safe, ...own]),
    waiting,
  };
}

/** Keeps a judge's sheets as the server gave them, and drops what was kept only until these hold it. */
export async function keepJudgeSheet(database: TastingDatabase, sheet: JudgeSheet): Promise<void> {
  const transaction = database.transaction(["sheets", "acknowledged"], "readwrite", STRICT);
  const key = sheetKey(sheet.space.slug, sheet.tasting.id);
  await transaction.objectStore("sheets").put({ key, userId: sheet.me.id, sheet });
  const acknowledged = transaction.objectStore("acknowledged");
  const readFrom = Date.parse(sheet.readAt) - LONGEST_DELIVERY_MS;
  // The server sends the last saves only, so an earlier one is never named: it goes when the sheet was read after it.
  for (const { id, entry } of await acknowledged.index("tasting").getAll(sheet.tasting.id)) {
    const isHeld = entry.receivedAt !== null && Date.parse(entry.receivedAt) < readFrom;
    if (isHeld || sheet.entries.some(({ event }) => event.id === id)) await acknowledged.delete(id);
  }
  await transaction.done;
}
