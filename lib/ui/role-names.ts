import type { Role } from "@/lib/model/roles";

/** What each role does, in the words of the club. */
export const ROLE_NAMES: Readonly<Record<Role, string>> = {
  organiser: "Organiser",
  member: "Member",
  judge: "Judge",
  steward: "Steward",
  guest: "Guest",
};

export const ROLE_DUTIES: Readonly<Record<Role, string>> = {
  organiser: "runs the club: invitations, shared brews, everything below",
  member: "writes recipes, keeps kettles, brews and logs",
  judge: "reads, and will score blind entries",
  steward: "reads, and will pour and assign blind codes",
  guest: "reads",
};
