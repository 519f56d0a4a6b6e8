import type { BrewState } from "../brew";
import type { ComparisonQuestion } from "./question";

/** Which brews of a club; nothing stands for no limit. */
export interface BrewFilter {
  readonly recipeId?: string | null;
  readonly sharedBrewId?: string | null;
  readonly brewerId?: string | null;
  readonly state?: BrewState | null;
  readonly ids?: readonly string[] | null;
  /** Days between which the brew day began, both included: 2026-03-14. */
  readonly from?: string | null;
  readonly to?: string | null;
}

/** More brews than one view takes; the latest count. */
export const MOST_BREWS = 2000;

export function filterOf({ recipe, sharedBrew, brewer, state, from, to }: ComparisonQuestion): BrewFilter {
  return { recipeId: recipe, sharedBrewId: sharedBrew, brewerId: brewer, state, from, to };
}
