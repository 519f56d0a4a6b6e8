/** A space belongs to a club, or is one person's own bench. */
export const SPACE_KINDS = ["club", "person"] as const;
export type SpaceKind = (typeof SPACE_KINDS)[number];
