import type { BrewState } from "../brew";

/** Which brews of a club; nothing stands for no limit. */
export interface BrewFilter {
  readonly recipeId?: string | undefined;
  readonly sharedBrewId?: string | undefined;
  readonly brewerIds?: readonly string[] | undefined;
  readonly states?: readonly BrewState[] | undefined;
  /** Days between which the brew day began, both included: 2026-03-14. */
  readonly from?: string | undefined;
  readonly to?: string | undefined;
}

/** More brews than one view takes; the latest count. */
export const MOST_BREWS = 2000;
