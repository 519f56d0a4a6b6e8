import "server-only";
import { roleMay } from "@/lib/model/roles";
import type { Member } from "../session";

/** Who keeps a comparison may rename it and take it away, as long as they may write here at all; so may organisers. */
export function mayChangeComparison({ userId, role }: Member, createdBy: string): boolean {
  return roleMay(role, "organise") || (createdBy === userId && roleMay(role, "brew"));
}
