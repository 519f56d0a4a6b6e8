import "server-only";
import type { Equipment } from "@/lib/calc/ledger";
import { equipmentInput } from "@/lib/model/equipment";
import { kettleKind } from "@/lib/model/learning/kettle-kind";
import { startedFromKind } from "@/lib/model/learning/learned-figures";
import type { Member } from "../session";
import { findKettlesElsewhere } from "./contributions";
import { listKettlesOfKind } from "./kettles";

/** The profile that a new kettle begins with: what kettles of its kind tell, and what is typical besides. */
export async function startFromKind(member: Member, typical: Equipment): Promise<Equipment> {
  const kind = kettleKind(typical);
  const [others, elsewhere] = await Promise.all([
    listKettlesOfKind(member, kind, null),
    findKettlesElsewhere(member, kind),
  ]);
  const started = startedFromKind(typical, [...others.map(({ kettle }) => kettle), ...elsewhere.kettles]);
  const read = equipmentInput.safeParse(started);
  // Figures that a profile does not take together are no start.
  return read.success ? read.data : typical;
}
