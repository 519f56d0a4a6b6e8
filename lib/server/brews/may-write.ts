import "server-only";
import { roleMay } from "@/lib/model/roles";
import type { Member } from "../session";

interface WhoBrews {
  readonly brewerUserId: string;
  readonly collaborators: readonly { readonly userId: string }[];
}

/** A brew is written by its brewer, by those who help, and by an organiser. */
export function mayWriteBrew(member: Member, { brewerUserId, collaborators }: WhoBrews): boolean {
  const takesPart = brewerUserId === member.userId || collaborators.some(({ userId }) => userId === member.userId);
  return (takesPart && roleMay(member.role, "brew")) || roleMay(member.role, "organise");
}
