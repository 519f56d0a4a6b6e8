import type { DaySheet } from "@/lib/model/day-sheet";
import { mergeEntries, type LogEntry } from "@/lib/model/log/log-entry";
import type { DayDatabase } from "./database";
import type { Waiting } from "./queue";

/** What this device knows of a brew. */
export interface KeptDay {
  readonly sheet: DaySheet | null;
  /** Everything of the log, that of the server and that of this device. */
  readonly entries: readonly LogEntry[];
  /** What is on this device only. */
  readonly waiting: readonly Waiting[];
}

const sheetKey = (space: string, brewId: string): string => `${space}/${brewId}`;

export async function readDay(database: DayDatabase, space: string, brewId: string): Promise<KeptDay> {
  const transaction = database.transaction(["sheets", "waiting", "acknowledged"]);
  const [kept, waiting, acknowledged] = await Promise.all([
    transaction.objectStore("sheets").get(sheetKey(space, brewId)),
    transaction.objectStore("waiting").index("brew").getAll(brewId),
    transaction.objectStore("acknowledged").index("brew").getAll(brewId),
  ]);
  const own = waiting.map(({ event, userId, userName }): LogEntry => ({
    event,
    actorId: userId,
    actorName: userName,
    receivedAt: null,
    clockOffsetMs: null,
  }));
  const entries = mergeEntries([...(kept?.sheet.entries ?? []), ...acknowledged.map(({ entry }) => entry), ...own]);
  return { sheet: kept?.sheet ?? null, entries, waiting };
}

/**
 * Keeps a sheet as the server gave it, and drops what was kept of the log only until a sheet holds it. All of this the
 * server has too, so the disk need not be waited for: a power cut takes back the whole of it or nothing.
 */
export async function keepSheet(database: DayDatabase, sheet: DaySheet): Promise<void> {
  const transaction = database.transaction(["sheets", "acknowledged"], "readwrite");
  const key = sheetKey(sheet.space.slug, sheet.brew.id);
  await transaction.objectStore("sheets").put({ key, userId: sheet.me.id, sheet });
  const held = new Set(sheet.entries.map(({ event }) => event.id));
  const acknowledged = transaction.objectStore("acknowledged");
  for (const id of await acknowledged.index("brew").getAllKeys(sheet.brew.id)) {
    if (held.has(id)) await acknowledged.delete(id);
  }
  await transaction.done;
}

/** Adds entries that others have made since the sheet was read. */
export async function keepEntries(database: DayDatabase, brewId: string, entries: readonly LogEntry[]): Promise<void> {
  if (entries.length === 0) return;
  const transaction = database.transaction("acknowledged", "readwrite");
  for (const entry of entries) await transaction.store.put({ id: entry.event.id, brewId, entry });
  await transaction.done;
}
