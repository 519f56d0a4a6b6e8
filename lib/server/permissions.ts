import "server-only";
import { roleMay, type Ability } from "@/lib/model/roles";
import { AppError } from "./app-error";
import type { Member } from "./session";

const REFUSAL: Readonly<Record<Ability, string>> = {
  "write recipes": "Only members and organisers write recipes here.",
  "keep equipment": "Only members and organisers keep equipment here.",
  brew: "Only members and organisers brew here.",
  order: "Only members and organisers order here.",
  "prepare tastings": "Only stewards and organisers prepare tastings here.",
  organise: "Only an organiser does this.",
};

/** Stops somebody whose role does not reach. Whether the record may be seen at all is decided before. */
export function requireAbility(member: Member, ability: Ability): void {
  if (!roleMay(member.role, ability)) throw new AppError("FORBIDDEN", REFUSAL[ability]);
}
