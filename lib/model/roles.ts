/** What somebody is in a club; in a person's own space the owner is organiser. */
export const ROLES = ["organiser", "member", "judge", "steward", "guest"] as const;
export type Role = (typeof ROLES)[number];

/** Roles that an invitation may give: nobody becomes organiser by a link. */
export const INVITABLE_ROLES = ["member", "judge", "steward", "guest"] as const satisfies readonly Role[];

export type Ability = "write recipes" | "keep equipment" | "brew" | "order" | "prepare tastings" | "organise";

/** Reading is open to every member of a space; this table says who may do more. */
const ABILITIES: Readonly<Record<Role, readonly Ability[]>> = {
  organiser: ["write recipes", "keep equipment", "brew", "order", "prepare tastings", "organise"],
  member: ["write recipes", "keep equipment", "brew", "order"],
  judge: [],
  steward: ["prepare tastings"],
  guest: [],
};

export function roleMay(role: Role, ability: Ability): boolean {
  return ABILITIES[role].includes(ability);
}
