import "server-only";
import { roleMay } from "@/lib/model/roles";
import type { Member } from "../session";

/** A lot of the club is changed by every member who brews; a lot of a member by them, or by an organiser. */
export function mayChangeLot(member: Member, ownerUserId: string | null): boolean {
  const isTheirs = ownerUserId === null || ownerUserId === member.userId;
  return (isTheirs && roleMay(member.role, "brew")) || roleMay(member.role, "organise");
}
