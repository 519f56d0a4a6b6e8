import { adapt, intentionOf, type AdaptOutcome, type Intention, type WayOutKind } from "@/lib/calc/adapt";
import { brew, type Equipment, type Ledger } from "@/lib/calc/ledger";
import type { RecipeContent } from "./recipe-content";

/** What a stored recipe should become, and its ledger on the kettle that it was written for. */
export interface WrittenIntention {
  readonly intention: Intention;
  readonly ledger: Ledger;
}

/** Which volume each kettle is asked for: its own usual batch, or that of the recipe. */
export type VolumeHeld = "usual" | "written";

/** null where the recipe does not brew on its own kettle, which a later version of the arithmetic may find. */
export function recipeIntention({ recipe, writtenOn }: RecipeContent): WrittenIntention | null {
  const outcome = brew({ recipe, equipment: writtenOn.equipment, ambient: writtenOn.ambient });
  if (!outcome.ok) return null;
  return { intention: intentionOf({ recipe, ledger: outcome.ledger }), ledger: outcome.ledger };
}

/** The recipe on another kettle, on a day like the one that it was written for. */
export function adaptTo(a: {
  readonly content: RecipeContent;
  readonly intention: Intention;
  readonly equipment: Equipment;
  readonly volume: VolumeHeld;
  /** The ways out to search, where not all of them are wanted. */
  readonly ways?: readonly WayOutKind[] | null;
}): AdaptOutcome {
  const { content, intention, equipment, volume, ways = null } = a;
  const intoFermenter = volume === "written" ? content.recipe.intoFermenter : null;
  const task = { intention, equipment, ambient: content.writtenOn.ambient, hold: { intoFermenter } };
  return adapt(ways === null ? task : { ...task, ways });
}
