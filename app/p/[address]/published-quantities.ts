import type { Ledger } from "@/lib/calc/ledger";
import type { RecipeContent } from "@/lib/model/recipe-content";
import { compute } from "@/lib/ui/recipe/compute";

/** The numbers of a published recipe on the kettle that it was written on; null where no wort comes of it. */
export function publishedQuantities({ recipe, writtenOn }: RecipeContent): Ledger["quantities"] | null {
  const computed = compute(recipe, writtenOn.equipment, writtenOn.ambient);
  return computed.ok ? computed.brewed.ledger.quantities : null;
}
