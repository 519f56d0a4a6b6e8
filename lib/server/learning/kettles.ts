import "server-only";
import type { KettleOfKind } from "@/lib/calc/learn";
import { FIGURES, type Equipment } from "@/lib/calc/ledger";
import { equipmentInput, type EquipmentProfile } from "@/lib/model/equipment";
import { kettleKind, typicalOf } from "@/lib/model/learning/kettle-kind";
import { isTold } from "@/lib/model/learning/learned-figures";
import { unlearnedProfile } from "@/lib/model/learning/unlearned-profile";
import type { EquipmentKind } from "@/lib/model/typical-equipment";
import { inSpace } from "../db";
import { listEquipment } from "../equipment/reads";
import type { Member } from "../session";
import { listEvidence, type SpaceReader, type TellingBrew } from "./evidence";

/** The pooling takes as many; a club with more goes by those that stand first by name. */
const MOST_KETTLES = 200;

/** A kettle with the brews that say something of it. */
export interface KettleWithBrews<P = EquipmentProfile> {
  readonly profile: P;
  readonly kettle: KettleOfKind;
  readonly brews: readonly TellingBrew[];
}

/** The kettles of one kind in the club of which brews or trials tell, but for one. */
export async function listKettlesOfKind(
  member: Member,
  kind: EquipmentKind,
  exceptId: string | null,
): Promise<readonly KettleWithBrews[]> {
  const heads = (await listEquipment(member)).filter(
    ({ id, equipment }) => id !== exceptId && kettleKind(equipment) === kind,
  );
  return (await withBrews(member, heads)).filter(tells).slice(0, MOST_KETTLES);
}

function tells({ brews, kettle }: KettleWithBrews): boolean {
  return brews.length > 0 || FIGURES.some(({ of }) => isTold(of(kettle.equipment)));
}

/** What is known of these kettles beside their profiles; one that is too odd to be compared is left out. */
export async function withBrews<P extends Pick<EquipmentProfile, "id" | "equipment">>(
  member: SpaceReader,
  profiles: readonly P[],
): Promise<readonly KettleWithBrews<P>[]> {
  const ids = profiles.map(({ id }) => id);
  const [brews, revisions] = await Promise.all([listEvidence(member, ids), revisionsOf(member, ids)]);
  return profiles.flatMap((profile): KettleWithBrews<P>[] => {
    const typical = typicalOf(profile.equipment);
    if (typical === null) return [];
    const own = brews.filter(({ equipmentId }) => equipmentId === profile.id);
    const equipment = unlearnedProfile([profile.equipment, ...(revisions.get(profile.id) ?? [])]);
    return [{ profile, brews: own, kettle: { typical, equipment, brews: own.map(({ evidence }) => evidence) } }];
  });
}

/** The earlier revisions of profiles in which something was learned, the newest first. */
async function revisionsOf(
  { spaceId, userId }: SpaceReader,
  ids: readonly string[],
): Promise<ReadonlyMap<string, readonly Equipment[]>> {
  const rows = await inSpace(spaceId, userId, (tx) =>
    tx.equipmentRevision.findMany({
      where: { spaceId, equipmentId: { in: [...ids] } },
      select: { equipmentId: true, figures: true },
      orderBy: { rev: "desc" },
    }),
  );
  const revisions = new Map<string, Equipment[]>();
  for (const { equipmentId, figures } of rows) {
    const read = equipmentInput.safeParse(figures);
    // One from before the present ranges says nothing that could be used.
    if (!read.success) continue;
    const kept = revisions.get(equipmentId);
    if (kept === undefined) revisions.set(equipmentId, [read.data]);
    else kept.push(read.data);
  }
  return revisions;
}
