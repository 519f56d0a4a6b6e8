import "server-only";
import type { CalendarEvent } from "@/lib/model/calendar";
import { brewDayEvent } from "@/lib/model/brew-day-event";
import { inSpace } from "../db";
import { environment } from "../environment";
import { isRecordId } from "../record-id";
import type { Member } from "../session";
import { findSheet } from "../shared-brews/find-sheet";
import { findSharedBrewPlan } from "../shared-brews/reads";

const MOST_DAYS = 200;

/** The brew days of the member, those called off included, so that a calendar can take them out. */
export async function listBrewDays(member: Member): Promise<readonly CalendarEvent[]> {
  const { spaceId, userId } = member;
  const rows = await inSpace(spaceId, userId, (tx) =>
    tx.sharedBrewParticipant.findMany({
      where: { spaceId, userId, brewAt: { not: null } },
      select: PART_COLUMNS,
      orderBy: [{ brewAt: "desc" }, { equipmentId: "asc" }],
      take: MOST_DAYS,
    }),
  );
  const events: CalendarEvent[] = [];
  for (const row of rows) events.push(...(await toEvents(member, row)));
  return events;
}

/** The brew day of one kettle; null where there is none. */
export async function findBrewDay(
  member: Member,
  { sharedBrewId, equipmentId }: { readonly sharedBrewId: string; readonly equipmentId: string },
): Promise<CalendarEvent | null> {
  if (!isRecordId(sharedBrewId) || !isRecordId(equipmentId)) return null;
  const { spaceId, userId } = member;
  const row = await inSpace(spaceId, userId, (tx) =>
    tx.sharedBrewParticipant.findFirst({
      where: { spaceId, sharedBrewId, equipmentId, brewAt: { not: null } },
      select: PART_COLUMNS,
    }),
  );
  const [event] = row === null ? [] : await toEvents(member, row);
  return event ?? null;
}

const PART_COLUMNS = {
  sharedBrewId: true,
  equipmentId: true,
  brewAt: true,
  zone: true,
  leftAt: true,
  lockVersion: true,
  equipment: { select: { name: true } },
} as const;

interface PartRow {
  readonly sharedBrewId: string;
  readonly equipmentId: string;
  readonly brewAt: Date | null;
  readonly zone: string | null;
  readonly leftAt: Date | null;
  readonly lockVersion: number;
  readonly equipment: { readonly name: string };
}

async function toEvents(member: Member, row: PartRow): Promise<readonly CalendarEvent[]> {
  const { sharedBrewId, equipmentId, brewAt, zone, leftAt, lockVersion } = row;
  const planned = await findSharedBrewPlan(member, sharedBrewId);
  if (planned === null || brewAt === null || zone === null) return [];
  const isCancelled = leftAt !== null || planned.state === "cancelled";
  const sheet = isCancelled ? null : await findSheet(member, { sharedBrewId, equipmentId });
  const { appOrigin } = environment;
  const path = `/s/${member.spaceSlug}/shared-brews/${sharedBrewId}/kettles/${equipmentId}`;
  return [
    brewDayEvent({
      sharedBrewId,
      equipmentId,
      title: planned.title,
      kettleName: row.equipment.name,
      brewAt,
      zone,
      planVersion: planned.version,
      lockVersion,
      rules: planned.plan.rules,
      isCancelled,
      dayMinutes: sheet?.brewed?.dayMinutes ?? null,
      url: appOrigin === null ? null : `${appOrigin}${path}`,
    }),
  ];
}
