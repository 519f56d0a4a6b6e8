import { QUANTITIES, type QuantityId } from "@/lib/calc/ledger";
import { DEFAULT_PREFERENCES } from "@/lib/model/preferences";
import type { LinkCard } from "@/lib/ui/card/link-card";
import { formatQuantity } from "@/lib/ui/format-quantity";
import { beerFigures } from "@/lib/ui/recipe/beer-figures";

type Figures = Readonly<Partial<Record<QuantityId, number | null>>>;

/** The numbers that a beer is spoken of by, for readers of whom nothing is known. */
function beerFigureTexts(figures: Figures): readonly { readonly label: string; readonly text: string }[] {
  return beerFigures(DEFAULT_PREFERENCES).flatMap(({ id, label }) => {
    const value = figures[id] ?? null;
    if (value === null) return [];
    const { dimension } = QUANTITIES[id];
    const { text, unit } = formatQuantity({ value, dimension, preferences: DEFAULT_PREFERENCES });
    return [{ label, text: `${text} ${unit}`.trim() }];
  });
}

export function figuresInWords(figures: Figures): string {
  return beerFigureTexts(figures)
    .map(({ label, text }) => `${label.toLowerCase()} ${text}`)
    .join(", ");
}

/** The same for a picture: strength, alcohol, bitterness and colour. */
export function cardFigures(figures: Figures): Pick<LinkCard, "figures" | "colourEbc"> {
  const { "fermenter.finalExtract": _left, ...shown } = figures;
  return { figures: beerFigureTexts(shown), colourEbc: figures["fermenter.colour"] ?? null };
}
