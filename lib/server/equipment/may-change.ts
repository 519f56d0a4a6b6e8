import "server-only";
import { roleMay } from "@/lib/model/roles";
import type { Member } from "../session";

/** A kettle is changed by its owner or by an organiser. */
export function mayChangeEquipment(member: Member, ownerUserId: string): boolean {
  const isOwner = ownerUserId === member.userId && roleMay(member.role, "keep equipment");
  return isOwner || roleMay(member.role, "organise");
}
