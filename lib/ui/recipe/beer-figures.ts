import type { QuantityId } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";

interface BeerFigure {
  readonly id: QuantityId;
  readonly label: string;
}

/** The numbers that a beer is spoken of by, in the words of one person's scale. */
export function beerFigures({ gravity }: Preferences): readonly BeerFigure[] {
  return [
    { id: "fermenter.originalExtract", label: gravity === "plato" ? "Original extract" : "Original gravity" },
    { id: "fermenter.finalExtract", label: gravity === "plato" ? "Final extract" : "Final gravity" },
    { id: "package.alcohol", label: "Alcohol" },
    { id: "fermenter.bitterness", label: "Bitterness" },
    { id: "fermenter.colour", label: "Colour" },
  ];
}
