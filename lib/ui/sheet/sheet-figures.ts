import type { QuantityId } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { beerFigures } from "../recipe/beer-figures";

/** The numbers that stand on top of a printed sheet: the beer, and what the day takes. */
export function sheetFigures(preferences: Preferences): readonly { readonly id: QuantityId; readonly label: string }[] {
  return [
    { id: "fermenter.volume", label: "Into the fermenter" },
    ...beerFigures(preferences),
    { id: "mash.grist", label: "Grist" },
    { id: "water.total", label: "Water" },
    { id: "water.strike", label: "Strike water" },
    { id: "fermenter.efficiency", label: "Efficiency" },
    { id: "day.time", label: "Brew day" },
    { id: "day.energy", label: "Energy" },
  ];
}
