import "server-only";
import { createHmac } from "node:crypto";
import type { KettleOfKind } from "@/lib/calc/learn";
import { equipmentInput } from "@/lib/model/equipment";
import { givenKettle, namelessKettle } from "@/lib/model/learning/kettle-contribution";
import { kettleKind } from "@/lib/model/learning/kettle-kind";
import type { EquipmentKind } from "@/lib/model/typical-equipment";
import { AppError } from "../app-error";
import { inSpace, toJson } from "../db";
import { environment } from "../environment";
import { findEquipment } from "../equipment/reads";
import { NOBODY } from "../nobody";
import type { Member } from "../session";
import { MADE_WITH } from "../summaries/made-with";
import type { SpaceReader } from "./evidence";
import { withBrews } from "./kettles";

/** Drawn by lot, and the same ones each time: more would make a page wait and the mean of the kind hardly surer. */
const MOST_KETTLES = 40;

/** What other clubs' kettles of a kind tell: nothing before five people gave theirs. */
export interface Elsewhere {
  readonly kettles: readonly KettleOfKind[];
  /** How many people gave them. */
  readonly people: number;
}

/** Kettles of one kind that members of other clubs gave, without names and in no order. */
export async function findKettlesElsewhere({ spaceId, userId }: Member, kind: EquipmentKind): Promise<Elsewhere> {
  const rows = await inSpace(
    spaceId,
    userId,
    (tx) => tx.$queryRaw<{ content: unknown; people: number }[]>`
      SELECT content, people::int FROM kettles_elsewhere(${kind}, ${MADE_WITH}, ${MOST_KETTLES}::int)`,
  );
  const kettles = rows.flatMap(({ content }) => {
    const read = givenKettle.safeParse(content);
    return read.success ? [read.data] : [];
  });
  return { kettles, people: rows[0]?.people ?? 0 };
}

/** Whether what this kettle's brews tell is given to other clubs. */
export async function findIsGiven({ spaceId, userId }: Member, equipmentId: string): Promise<boolean> {
  const given = await inSpace(spaceId, userId, (tx) =>
    tx.kettleContribution.findUnique({
      where: { spaceId_equipmentId: { spaceId, equipmentId } },
      select: { kind: true },
    }),
  );
  return given !== null;
}

/**
 * Gives what a kettle's brews tell to other clubs, or takes it back. Only its owner decides this; whatever was given is
 * gone from there at once when it is taken back.
 */
export async function giveKettle(
  member: Member,
  { equipmentId, isGiven }: { readonly equipmentId: string; readonly isGiven: boolean },
): Promise<void> {
  const { spaceId, userId } = member;
  const profile = await findEquipment(member, equipmentId);
  if (profile === null) throw new AppError("NOT_FOUND", "There is no such kettle here.");
  if (profile.ownerId !== userId) {
    throw new AppError("FORBIDDEN", "Only the owner of a kettle gives what it has told to other clubs.");
  }
  await inSpace(spaceId, userId, async (tx) => {
    if (!isGiven) {
      await tx.kettleContribution.deleteMany({ where: { spaceId, equipmentId } });
      return;
    }
    const kind = kettleKind(profile.equipment);
    const contributorHash = pseudonymOf(userId);
    await tx.kettleContribution.upsert({
      where: { spaceId_equipmentId: { spaceId, equipmentId } },
      create: { spaceId, equipmentId, kind, contributorHash, agreedBy: userId },
      update: {},
    });
  });
  if (isGiven) await remakeContributions(spaceId, [equipmentId]);
}

/** Makes anew what is given of kettles whose profile or brews have changed since. */
export async function remakeStaleContributions(spaceId: string): Promise<void> {
  const stale = await inSpace(
    spaceId,
    NOBODY,
    (tx) => tx.$queryRaw<{ id: string }[]>`
      SELECT k.equipment_id::text AS id FROM kettle_contribution k
      WHERE k.space_id = ${spaceId}::uuid
        AND (k.made_at IS NULL OR k.calc_version IS DISTINCT FROM ${MADE_WITH}
             OR EXISTS (SELECT FROM equipment_revision r
                        WHERE r.space_id = k.space_id AND r.equipment_id = k.equipment_id AND r.created_at > k.made_at)
             OR EXISTS (SELECT FROM brew b JOIN brew_summary s ON s.space_id = b.space_id AND s.brew_id = b.id
                        WHERE b.space_id = k.space_id AND b.equipment_id = k.equipment_id AND s.made_at > k.made_at))`,
  );
  await remakeContributions(
    spaceId,
    stale.map(({ id }) => id),
  );
}

async function remakeContributions(spaceId: string, equipmentIds: readonly string[]): Promise<void> {
  if (equipmentIds.length === 0) return;
  const reader = { spaceId, userId: NOBODY };
  const madeAt = new Date();
  const kettles = await withBrews(reader, await headsOf(reader, equipmentIds));
  for (const { profile, kettle } of kettles) {
    const nameless = namelessKettle(kettle);
    if (nameless === null) continue;
    await inSpace(spaceId, NOBODY, (tx) =>
      tx.kettleContribution.updateMany({
        where: { spaceId, equipmentId: profile.id },
        data: {
          kind: kettleKind(nameless.equipment),
          content: toJson(nameless),
          calcVersion: MADE_WITH,
          madeAt,
        },
      }),
    );
  }
}

async function headsOf({ spaceId, userId }: SpaceReader, equipmentIds: readonly string[]) {
  const rows = await inSpace(
    spaceId,
    userId,
    (tx) => tx.$queryRaw<{ id: string; figures: unknown }[]>`
      SELECT e.id::text, r.figures FROM equipment e
      JOIN equipment_revision r ON r.space_id = e.space_id AND r.equipment_id = e.id AND r.rev = e.head_rev
      WHERE e.space_id = ${spaceId}::uuid AND e.id = ANY (${equipmentIds}::uuid[])`,
  );
  return rows.map(({ id, figures }) => ({ id, equipment: equipmentInput.parse(figures) }));
}

/** The same for all that a person gives, so that five kettles of one are not five people. */
function pseudonymOf(userId: string): Uint8Array<ArrayBuffer> {
  return new Uint8Array(createHmac("sha256", environment.authSecret).update(`kettles of ${userId}`).digest());
}
