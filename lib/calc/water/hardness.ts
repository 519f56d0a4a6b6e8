import { requireInRange } from "../errors";
import { milligramsPerLitre, type MilligramsPerLitre } from "../units";
import { CALCIUM_CARBONATE_EQUIVALENT, MOLAR_MASS, VALENCE } from "./molar-mass";

export const HARD_WATER_RANGE = { unit: "mg/L", min: 0, max: 1500 } as const;

/**
 * Gives total hardness: calcium and magnesium together, as mg/L of calcium carbonate.
 *
 * @returns Hardness, mg/L as CaCO3.
 * @validRange 0 to 1500 mg/L of each ion.
 * @throws {@link OutOfRangeError} when an ion is outside the valid range.
 * @source IUPAC 2021, abridged standard atomic weights (docs/sources.md#iupac-2021)
 * @example
 * hardness({ calciumMgL: milligramsPerLitre(80), magnesiumMgL: milligramsPerLitre(12) }); // 249.2
 */
export function hardness({
  calciumMgL,
  magnesiumMgL,
}: {
  readonly calciumMgL: MilligramsPerLitre;
  readonly magnesiumMgL: MilligramsPerLitre;
}): MilligramsPerLitre {
  requireInRange("calcium", calciumMgL, HARD_WATER_RANGE);
  requireInRange("magnesium", magnesiumMgL, HARD_WATER_RANGE);
  const mEqL =
    (calciumMgL * VALENCE.calcium) / MOLAR_MASS.calcium + (magnesiumMgL * VALENCE.magnesium) / MOLAR_MASS.magnesium;
  return milligramsPerLitre(mEqL * CALCIUM_CARBONATE_EQUIVALENT);
}
