import "server-only";
import { createHash } from "node:crypto";
import { readCsvRows, type CsvRow } from "@/lib/model/cellar/csv/rows";
import { readCsvTable } from "@/lib/model/cellar/csv/table";
import type { CsvChoices } from "@/lib/model/cellar/csv/columns";
import type { EventStamp, LogEvent } from "@/lib/model/log/log-event";
import { loggedRange } from "@/lib/model/log/series";
import { AppError } from "../app-error";
import { inSpace } from "../db";
import { insertEvents, type NewEvent } from "../log/insert-events";
import { brewRefusals, NO_SUCH_BREW, NOT_YOURS } from "../log/writable-brews";
import type { Member } from "../session";

/** So many rows go to the database at once: few enough that no statement takes long. */
const BATCH = 1000;
const MOST_NAMED = 5;

export interface ImportedReadings {
  readonly added: number;
  /** They were in the log already, from the same file or another that overlaps. */
  readonly known: number;
  readonly leftOut: number;
}

/**
 * Takes the readings of a file into the log of a brew, all in one transaction. An identifier is made of brew, quantity, time and value, so the
 * same file twice adds nothing, whoever sends it.
 */
export async function importReadings(
  member: Member,
  { brewId, text, choices }: { readonly brewId: string; readonly text: string; readonly choices: CsvChoices },
): Promise<ImportedReadings> {
  const table = readCsvTable(text);
  if (!table.ok) throw new AppError("INVALID", table.message);
  const rows = readCsvRows(table.lines, choices, new Date());
  const wrong = rows.filter((row) => !row.ok);
  if (wrong.length > 0 && !choices.leaveOut) throw new AppError("INVALID", whatIsWrong(wrong));
  const events = [...new Map(rows.flatMap((row) => eventsOf(row, brewId)).map((event) => [event.id, event])).values()];
  if (events.length === 0) throw new AppError("INVALID", "No line of the file holds a reading. Nothing was taken.");
  const added = await insertAll(member, brewId, events);
  return { added, known: events.length - added, leftOut: wrong.length };
}

function whatIsWrong(wrong: readonly CsvRow[]): string {
  const named = wrong
    .slice(0, MOST_NAMED)
    .map((row) => (row.ok ? "" : `line ${String(row.line)}: ${row.message}`))
    .join("; ");
  const more = wrong.length > MOST_NAMED ? `; and ${String(wrong.length - MOST_NAMED)} more lines` : "";
  return `Nothing was taken: ${named}${more}. Put the file right, or leave these lines out.`;
}

function insertAll(member: Member, brewId: string, events: readonly LogEvent[]): Promise<number> {
  const { spaceId, userId } = member;
  return inSpace(spaceId, userId, async (tx) => {
    const reason = (await brewRefusals(tx, member, new Set([brewId])))(brewId);
    if (reason === NO_SUCH_BREW) throw new AppError("NOT_FOUND", reason);
    if (reason !== null) throw new AppError(reason === NOT_YOURS ? "FORBIDDEN" : "CONFLICT", reason);
    let added = 0;
    for (let from = 0; from < events.length; from += BATCH) {
      const batch = events
        .slice(from, from + BATCH)
        .map((event): NewEvent => ({ event, actorId: userId, sentAt: null, clockOffsetMs: null }));
      const fates = await insertEvents(tx, spaceId, batch);
      added += fates.filter(({ fate }) => fate === "stored").length;
    }
    return added;
  });
}

function eventsOf(row: CsvRow, brewId: string): readonly LogEvent[] {
  if (!row.ok) return [];
  const occurredAt = row.at.toISOString();
  return row.readings.map(({ quantity, value, sd, entered }): LogEvent => {
    const stamp: EventStamp = {
      id: derivedId("reading", brewId, quantity, occurredAt, value.toFixed(6)),
      brewId,
      deviceId: derivedId("file", brewId),
      deviceSeq: null,
      occurredAt,
    };
    const { kind } = loggedRange(quantity);
    return { ...stamp, kind, quantity, value, sd, entered, instrument: "probe", sampleC: null, note: "", step: null };
  });
}

/** A UUID that follows from what it stands for (RFC 9562, version 8). */
function derivedId(...parts: readonly string[]): string {
  const bytes = createHash("sha256").update(parts.join("\u0000")).digest().subarray(0, 16);
  bytes.writeUInt8((bytes.readUInt8(6) & 0x0f) | 0x80, 6);
  bytes.writeUInt8((bytes.readUInt8(8) & 0x3f) | 0x80, 8);
  const hex = bytes.toString("hex");
  return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20)].join("-");
}
