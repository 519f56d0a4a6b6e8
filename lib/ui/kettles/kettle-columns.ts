import { QUANTITIES, type Dimension, type QuantityId } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";

interface NumberColumnFacts {
  readonly id: QuantityId | "hops";
  readonly label: string;
  /** What is weighed or poured is no prediction, and has no interval. */
  readonly isPredicted: boolean;
}

/** Columns of numbers, by the ledger quantity that they show; the hops are the sum of all additions. */
export const NUMBER_COLUMNS = [
  { id: "fermenter.volume", isPredicted: true, label: "Volume" },
  { id: "fermenter.originalExtract", isPredicted: true, label: "Strength" },
  { id: "fermenter.bitterness", isPredicted: true, label: "Bitterness" },
  { id: "mash.grist", isPredicted: false, label: "Grist" },
  { id: "water.total", isPredicted: false, label: "Water" },
  { id: "hops", isPredicted: false, label: "Hops" },
  { id: "fermenter.efficiency", isPredicted: true, label: "Efficiency" },
  { id: "kettle.heatingTime", isPredicted: true, label: "To the boil" },
  { id: "day.time", isPredicted: true, label: "Brew day" },
  { id: "day.energy", isPredicted: true, label: "Energy" },
] as const satisfies readonly NumberColumnFacts[];

export type NumberColumn = (typeof NUMBER_COLUMNS)[number]["id"];

export function dimensionOf(column: NumberColumn): Dimension {
  return column === "hops" ? "grams" : QUANTITIES[column].dimension;
}

/** Digits of a column where they are not those of its dimension. */
export function digitsOf(column: NumberColumn, { units }: Preferences): number | undefined {
  if (column === "hops") return units === "us" ? 1 : 0;
  return column === "fermenter.efficiency" ? 0 : undefined;
}
