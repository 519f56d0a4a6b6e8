import type { BrewEvidence } from "@/lib/calc/learn";
import type { FigureName } from "@/lib/calc/ledger";

/** One estimate of one figure, as evidence. */
export const tellingOf = (name: FigureName, value: number, sd: number): BrewEvidence => ({
  figures: [name],
  at: [value],
  precision: [[sd ** -2]],
  pull: [0],
  misfit: 0,
  readings: 1,
  leftOut: [],
});
