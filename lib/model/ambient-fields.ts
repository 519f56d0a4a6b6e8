import type { Ambient } from "@/lib/calc/ledger";
import { celsius, fraction } from "@/lib/calc/units";
import { measuredField } from "./field";

export const AMBIENT_FIELDS = {
  air: measuredField("Air temperature", "temperature", celsius, { min: -20, max: 50 }),
  humidity: measuredField("Relative humidity", "fraction", fraction),
  tapWater: measuredField("Tap water temperature", "temperature", celsius, { min: 0, max: 40 }),
  grain: measuredField("Grain temperature", "temperature", celsius, { min: -20, max: 50 }),
} as const;

/** A day in a heated room, for a recipe that says nothing else. Common practice, no source. */
export const USUAL_DAY: Ambient = {
  air: celsius(18),
  humidity: fraction(0.6),
  tapWater: celsius(12),
  grain: celsius(18),
};
