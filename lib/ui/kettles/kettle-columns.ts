import { QUANTITIES, type Dimension, type QuantityId } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";

/** Columns of numbers, by the ledger quantity that they show; the hops are the sum of all additions. */
export const NUMBER_COLUMNS = [
  { id: "fermenter.volume", label: "Volume" },
  { id: "fermenter.originalExtract", label: "Strength" },
  { id: "fermenter.bitterness", label: "Bitterness" },
  { id: "mash.grist", label: "Grist" },
  { id: "water.total", label: "Water" },
  { id: "hops", label: "Hops" },
  { id: "fermenter.efficiency", label: "Efficiency" },
  { id: "kettle.heatingTime", label: "To the boil" },
  { id: "day.time", label: "Brew day" },
  { id: "day.energy", label: "Energy" },
] as const satisfies readonly { readonly id: QuantityId | "hops"; readonly label: string }[];

export type NumberColumn = (typeof NUMBER_COLUMNS)[number]["id"];

export function dimensionOf(column: NumberColumn): Dimension {
  return column === "hops" ? "grams" : QUANTITIES[column].dimension;
}

/** Digits of a column where they are not those of its dimension. */
export function digitsOf(column: NumberColumn, { units }: Preferences): number | undefined {
  if (column === "hops") return units === "us" ? 1 : 0;
  return column === "fermenter.efficiency" ? 0 : undefined;
}
