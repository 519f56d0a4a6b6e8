import "server-only";
import type { TastingEntry } from "@/lib/model/tasting/judge-sheet";
import type { Choice, Sheet } from "@/lib/model/tasting/sheet";
import type { TastingStamp } from "@/lib/model/tasting/sheet-event";

/** A row of what judges wrote. */
export interface SheetRow {
  readonly id: string;
  readonly tastingId: string;
  readonly flightNo: number;
  readonly judgeId: string;
  readonly actorId: string;
  readonly kind: string;
  readonly entryNo: number | null;
  readonly deviceId: string;
  readonly deviceSeq: bigint | null;
  readonly occurredAt: Date;
  readonly clockOffsetMs: bigint | null;
  readonly receivedAt: Date;
  readonly isFinal: boolean;
  readonly payload: unknown;
}

/** A row as an entry. What it holds was checked when it was taken, and only what was checked is written. */
export function toTastingEntry(row: SheetRow, nameOf: (userId: string) => string): TastingEntry {
  const stamp: TastingStamp = {
    id: row.id,
    tastingId: row.tastingId,
    flightNo: row.flightNo,
    deviceId: row.deviceId,
    deviceSeq: row.deviceSeq === null ? null : Number(row.deviceSeq),
    occurredAt: row.occurredAt.toISOString(),
  };
  const { entryNo, isFinal, payload } = row;
  return {
    event:
      entryNo === null
        ? { ...stamp, kind: "choice", isFinal, payload: payload as Choice }
        : { ...stamp, kind: "sheet", entryNo, isFinal, payload: payload as Sheet },
    actorId: row.actorId,
    actorName: nameOf(row.actorId),
    receivedAt: row.receivedAt.toISOString(),
    clockOffsetMs: row.clockOffsetMs === null ? null : Number(row.clockOffsetMs),
  };
}
