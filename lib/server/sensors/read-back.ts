import "server-only";
import { MEASURED_KINDS } from "@/lib/model/log/log-event";
import type { LoggedReading } from "@/lib/model/log/logged-readings";
import { projectLog } from "@/lib/model/log/project-log";
import { loggedRange } from "@/lib/model/log/series";
import type { ReadingsPage, ReadingsQuery } from "@/lib/model/sensor/readings-page";
import { inSpace, type SpaceTransaction } from "../db";
import { toEntries } from "../log/entries";
import { EVENT_COLUMNS } from "../log/event-row";
import { isRecordId } from "../record-id";
import type { Member } from "../session";

interface Place {
  readonly id: string;
  readonly place: string;
}

/** A page of the readings of a brew; null where there is no such brew. */
export async function findReadings(member: Member, brewId: string, query: ReadingsQuery): Promise<ReadingsPage | null> {
  if (!isRecordId(brewId)) return null;
  const { spaceId, userId } = member;
  return inSpace(spaceId, userId, async (tx) => {
    const brew = await tx.brew.findUnique({ where: { spaceId_id: { spaceId, id: brewId } }, select: { id: true } });
    if (brew === null) return null;
    const places = await placesOf(tx, { spaceId, brewId, query });
    const shown = places.slice(0, query.limit);
    const rows = await tx.brewEvent.findMany({
      where: {
        spaceId,
        brewId,
        OR: [{ id: { in: shown.map(({ id }) => id) } }, { kind: { in: ["correct", "void"] } }],
      },
      select: EVENT_COLUMNS,
    });
    // No name is shown, so none is looked up.
    const log = projectLog(toEntries(rows, () => ""));
    const readings = new Map(log.readings.map((reading) => [reading.id, reading]));
    return {
      readings: shown.flatMap(({ id }) => toKept(readings.get(id))),
      next: places.length > query.limit ? (shown.at(-1)?.place ?? null) : null,
    };
  });
}

/** One more than is shown, which tells whether there is another page. */
function placesOf(
  tx: SpaceTransaction,
  { spaceId, brewId, query }: { readonly spaceId: string; readonly brewId: string; readonly query: ReadingsQuery },
): Promise<readonly Place[]> {
  const [at = "-infinity", id = "00000000-0000-0000-0000-000000000000"] = query.after?.split("_") ?? [];
  const quantity = query.quantity ?? null;
  return tx.$queryRaw<Place[]>`
    SELECT id::text, to_char(received_at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.US"Z_"') || id::text AS place
    FROM brew_event
    WHERE space_id = ${spaceId}::uuid AND brew_id = ${brewId}::uuid AND kind = ANY (${[...MEASURED_KINDS]}::text[])
      AND (received_at, id) > (${at}::timestamptz, ${id}::uuid)
      AND (${quantity}::text IS NULL OR payload ->> 'quantity' = ${quantity}::text)
    ORDER BY received_at, id
    LIMIT ${query.limit + 1}`;
}

function toKept(reading: LoggedReading | undefined): ReadingsPage["readings"] {
  if (reading === undefined) return [];
  const { id, measured, at, isVoid, history } = reading;
  const { quantity, value, sd, instrument, note } = measured;
  return [
    {
      ...{
        id,
        at: new Date(at).toISOString(),
        quantity,
        value,
        unit: loggedRange(quantity).unit,
        sd,
        instrument,
        note,
      },
      corrected: history.some((version, index) => index > 0 && version.measured !== null),
      void: isVoid,
    },
  ];
}
