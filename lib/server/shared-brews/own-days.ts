import "server-only";
import { inSpace } from "../db";
import type { Member } from "../session";

/** A day that the member has chosen for a kettle of theirs. */
export interface OwnBrewDay {
  readonly sharedBrewId: string;
  readonly equipmentId: string;
  readonly title: string;
  readonly kettleName: string;
  readonly brewAt: Date;
  readonly zone: string;
}

const MOST_SHOWN = 200;

export async function listOwnBrewDays({ spaceId, userId }: Member): Promise<readonly OwnBrewDay[]> {
  const rows = await inSpace(spaceId, userId, (tx) =>
    tx.sharedBrewParticipant.findMany({
      where: { spaceId, userId, leftAt: null, brewAt: { not: null }, sharedBrew: { state: { not: "cancelled" } } },
      select: {
        sharedBrewId: true,
        equipmentId: true,
        brewAt: true,
        zone: true,
        sharedBrew: { select: { title: true } },
        equipment: { select: { name: true } },
      },
      orderBy: [{ brewAt: "desc" }, { equipmentId: "asc" }],
      take: MOST_SHOWN,
    }),
  );
  return rows.flatMap(({ sharedBrewId, equipmentId, brewAt, zone, sharedBrew, equipment }) =>
    brewAt === null || zone === null
      ? []
      : [{ sharedBrewId, equipmentId, title: sharedBrew.title, kettleName: equipment.name, brewAt, zone }],
  );
}
