import "server-only";
import type { LogEntry } from "@/lib/model/log/log-entry";
import { fromRow, type EventRow } from "./event-row";

/** Rows as entries of the log, with the names of who made them; in no order, for the log has its own. */
export function toEntries(rows: readonly EventRow[], nameOf: (userId: string) => string): readonly LogEntry[] {
  return rows.flatMap((row): LogEntry[] => {
    const event = fromRow(row);
    if (event === null) return [];
    return [
      {
        event,
        actorId: row.actorId,
        actorName: nameOf(row.actorId),
        receivedAt: row.receivedAt.toISOString(),
        clockOffsetMs: row.clockOffsetMs === null ? null : Number(row.clockOffsetMs),
      },
    ];
  });
}
