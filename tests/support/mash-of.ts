import { fraction, grams, kilograms, litres, milliequivalentsPerKilogramPh, ph } from "@/lib/calc/units";
import type { HardnessReaction, Ion, Liquor, MashedMalt } from "@/lib/calc/water";
import { waterOf } from "./water-of";

/** Nothing set free by calcium and magnesium. */
export const NO_REACTION: HardnessReaction = { calcium: 0, magnesium: 0 };

/** A malt with a straight titration. */
export function maltOf(kg: number, distilledWaterPh: number, buffering: number, lacticFraction = 0): MashedMalt {
  return {
    kg: kilograms(kg),
    distilledWaterPh: ph(distilledWaterPh),
    buffering: milliequivalentsPerKilogramPh(buffering),
    lacticFraction: fraction(lacticFraction),
  };
}

/** Water of pH 7.5 without salts that keeps its carbon dioxide, unless told otherwise. */
export function liquorOf(
  volume: number,
  ions: Partial<Record<Ion, number>>,
  other: {
    readonly ph?: number;
    readonly salts?: Readonly<Partial<Record<keyof Liquor["salts"], number>>>;
    readonly carbonDioxide?: Liquor["carbonDioxide"];
  } = {},
): Liquor {
  const salts = Object.fromEntries(Object.entries(other.salts ?? {}).map(([salt, mass]) => [salt, grams(mass)]));
  return {
    litres: litres(volume),
    ions: waterOf(ions),
    ph: ph(other.ph ?? 7.5),
    salts,
    carbonDioxide: other.carbonDioxide ?? "kept",
  };
}
