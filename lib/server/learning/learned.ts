import "server-only";
import type { EquipmentProfile } from "@/lib/model/equipment";
import { kettleKind } from "@/lib/model/learning/kettle-kind";
import { learnedProfile, type LearnedProfile } from "@/lib/model/learning/learned-figures";
import { findEquipment } from "../equipment/reads";
import type { Member } from "../session";
import { findKettlesElsewhere, type Elsewhere } from "./contributions";
import type { TellingBrew } from "./evidence";
import { listKettlesOfKind, withBrews, type KettleWithBrews } from "./kettles";

/** A kettle, the brews on it, and what these and its kind say of it. */
export interface Learning {
  readonly profile: EquipmentProfile;
  /** Every brew that says something, in order of time. */
  readonly brews: readonly TellingBrew[];
  /** Those that count: the last of them. */
  readonly counted: readonly TellingBrew[];
  readonly kettle: KettleWithBrews["kettle"];
  /** Of its kind in the club. */
  readonly others: readonly KettleWithBrews[];
  /** Of its kind in other clubs. */
  readonly elsewhere: Elsewhere;
  readonly learned: LearnedProfile;
}

/**
 * What the brews of a kettle say of its figures.
 *
 * @param since - The first brew that counts, after something was changed at the kettle; null for all.
 * @returns null where there is no such kettle, no such brew, or the kettle is too odd to be compared.
 */
export async function findLearning(
  member: Member,
  equipmentId: string,
  since: string | null,
): Promise<Learning | null> {
  const profile = await findEquipment(member, equipmentId);
  if (profile === null) return null;
  const [own] = await withBrews(member, [profile]);
  if (own === undefined) return null;
  const from = since === null ? 0 : own.brews.findIndex(({ id }) => id === since);
  if (from < 0) return null;
  const counted = own.brews.slice(from);
  const kettle = { ...own.kettle, brews: counted.map(({ evidence }) => evidence) };
  const kind = kettleKind(profile.equipment);
  const [others, elsewhere] = await Promise.all([
    listKettlesOfKind(member, kind, equipmentId),
    findKettlesElsewhere(member, kind),
  ]);
  const learned = learnedProfile({
    profile: profile.equipment,
    kettle,
    others: [...others.map((other) => other.kettle), ...elsewhere.kettles],
  });
  return { profile, brews: own.brews, counted, kettle, others, elsewhere, learned };
}
