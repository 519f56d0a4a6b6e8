import "server-only";
import { roleMay } from "@/lib/model/roles";
import { proveEveryMembership } from "../proof";
import type { Viewer } from "../session";

/** A space as a form offers it. */
export interface SpaceChoice {
  readonly value: string;
  readonly text: string;
}

/** Where the viewer may write recipes: the own bench first, then their clubs by name. */
export async function listWritableSpaces(viewer: Viewer): Promise<readonly SpaceChoice[]> {
  const spaces = (await proveEveryMembership(viewer)).filter(({ role }) => roleMay(role, "write recipes"));
  const benches = spaces.filter(({ spaceKind }) => spaceKind === "person");
  const clubs = spaces.filter(({ spaceKind }) => spaceKind === "club");
  return [
    ...benches.map(({ spaceSlug, spaceName }) => ({ value: spaceSlug, text: `my own bench (${spaceName})` })),
    ...clubs.map(({ spaceSlug, spaceName }) => ({ value: spaceSlug, text: spaceName })),
  ];
}
