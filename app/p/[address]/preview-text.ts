import { QUANTITIES } from "@/lib/calc/ledger";
import { DEFAULT_PREFERENCES } from "@/lib/model/preferences";
import type { PublishedRecipe } from "@/lib/model/publication";
import { formatQuantity } from "@/lib/ui/format-quantity";
import { beerFigures } from "@/lib/ui/recipe/beer-figures";
import { compute } from "@/lib/ui/recipe/compute";

/** The beer in one line, for the preview of a link: its figures as the page computes them. */
export function previewText({ content, authorName }: PublishedRecipe): string {
  const { equipment, ambient } = content.writtenOn;
  const computed = compute(content.recipe, equipment, ambient);
  if (!computed.ok) return `A recipe by ${authorName}.`;
  const { quantities } = computed.brewed.ledger;
  const figures = beerFigures(DEFAULT_PREFERENCES).flatMap(({ id, label }) => {
    const value = quantities[id];
    if (value === null) return [];
    const { dimension } = QUANTITIES[id];
    const { text, unit } = formatQuantity({ value, dimension, preferences: DEFAULT_PREFERENCES });
    return [`${label.toLowerCase()} ${text} ${unit}`];
  });
  return `A recipe by ${authorName}: ${figures.join(", ")}.`;
}
