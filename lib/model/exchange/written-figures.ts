import { brew, type QuantityId } from "@/lib/calc/ledger";
import type { RecipeContent } from "../recipe-content";

/** The ledger of a recipe on the kettle it is written for; every number is null where no wort comes of it. */
export function writtenFigures({ recipe, writtenOn }: RecipeContent): (id: QuantityId) => number | null {
  const outcome = brew({ recipe, equipment: writtenOn.equipment, ambient: writtenOn.ambient });
  return (id) => (outcome.ok ? outcome.ledger.quantities[id] : null);
}
