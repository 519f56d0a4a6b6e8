import "server-only";
import { roleMay } from "@/lib/model/roles";
import { AppError } from "../app-error";
import type { Member } from "../session";

/** A kettle is changed by its owner or by an organiser. */
export function mayChangeEquipment(member: Member, ownerUserId: string): boolean {
  const isOwner = ownerUserId === member.userId && roleMay(member.role, "keep equipment");
  return isOwner || roleMay(member.role, "organise");
}

/** Stops whoever only reads a kettle, before anything is computed for them. */
export function requireMayChange({ mayWrite }: { readonly mayWrite: boolean }): void {
  if (mayWrite) return;
  throw new AppError("FORBIDDEN", "Only the owner of this equipment or an organiser changes it.");
}
