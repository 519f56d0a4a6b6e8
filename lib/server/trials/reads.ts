import "server-only";
import { trialEntry, type KeptEntry } from "@/lib/model/trial/trial-entry";
import type { Trial, TrialLine } from "@/lib/model/trial/trial";
import { displayNames } from "../accounts/names";
import { inSpace } from "../db";
import { isRecordId } from "../record-id";
import type { Member } from "../session";

/** The trials of a kettle, the newest first. */
export async function listTrials({ spaceId, userId }: Member, equipmentId: string): Promise<readonly TrialLine[]> {
  if (!isRecordId(equipmentId)) return [];
  const rows = await inSpace(spaceId, userId, (tx) =>
    tx.commissioningTrial.findMany({
      where: { spaceId, equipmentId },
      select: { id: true, begunAt: true, acceptedRev: true, _count: { select: { readings: true } } },
      orderBy: [{ begunAt: "desc" }, { id: "desc" }],
    }),
  );
  return rows.map(({ id, begunAt, acceptedRev, _count }) => ({
    id,
    begunAt: begunAt.toISOString(),
    entryCount: _count.readings,
    acceptedRev,
  }));
}

/** A trial of a kettle with everything that was read in it. */
export async function findTrial(member: Member, equipmentId: string, id: string): Promise<Trial | null> {
  if (!isRecordId(id) || !isRecordId(equipmentId)) return null;
  const { spaceId, userId } = member;
  const row = await inSpace(spaceId, userId, (tx) =>
    tx.commissioningTrial.findFirst({
      where: { spaceId, id, equipmentId },
      include: { readings: { orderBy: [{ receivedAt: "asc" }, { id: "asc" }] } },
    }),
  );
  if (row === null) return null;
  const people = [row.begunBy, row.acceptedBy ?? row.begunBy, ...row.readings.map(({ actorId }) => actorId)];
  const nameOf = await displayNames(member, people);
  return {
    id: row.id,
    equipmentId: row.equipmentId,
    begunAt: row.begunAt.toISOString(),
    begunByName: nameOf(row.begunBy),
    accepted:
      row.acceptedRev === null || row.acceptedBy === null
        ? null
        : { rev: row.acceptedRev, byName: nameOf(row.acceptedBy) },
    entries: row.readings.flatMap((reading) => keptEntry(reading, nameOf)),
  };
}

interface ReadingRow {
  readonly id: string;
  readonly part: string;
  readonly run: number;
  readonly kind: string;
  readonly occurredAt: Date;
  readonly value: number | null;
  readonly payload: unknown;
  readonly replaces: string | null;
  readonly actorId: string;
  readonly receivedAt: Date;
}

function keptEntry(row: ReadingRow, nameOf: (userId: string) => string): readonly KeptEntry[] {
  const { id, part, run, kind, occurredAt, value, payload, replaces } = row;
  const read = trialEntry.safeParse({
    ...{ id, part, run, kind, payload, replaces },
    occurredAt: occurredAt.toISOString(),
    ...(value === null ? {} : { value }),
  });
  // A row that a file of a club brought may be of a kind that this program does not know.
  if (!read.success) return [];
  return [{ ...read.data, actorName: nameOf(row.actorId), receivedAt: row.receivedAt.toISOString() }];
}
