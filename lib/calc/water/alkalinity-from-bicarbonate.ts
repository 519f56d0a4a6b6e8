import { requireInRange } from "../errors";
import { milligramsPerLitre, type MilligramsPerLitre } from "../units";
import { CALCIUM_CARBONATE_EQUIVALENT, MOLAR_MASS } from "./molar-mass";

export const BICARBONATE_RANGE = { unit: "mg/L", min: 0, max: 10000 } as const;

/**
 * Expresses bicarbonate as alkalinity in mg/L of calcium carbonate, equivalent for equivalent.
 *
 * @param bicarbonate - Bicarbonate, mg/L.
 * @returns Alkalinity, mg/L as CaCO3; below pH 8.3 bicarbonate is practically all of it.
 * @validRange 0 to 10 000 mg/L.
 * @throws {@link OutOfRangeError} when `bicarbonate` is outside the valid range.
 * @source IUPAC 2021, abridged standard atomic weights (docs/sources.md#iupac-2021)
 * @example
 * alkalinityFromBicarbonate(milligramsPerLitre(100)); // 82.02
 */
export function alkalinityFromBicarbonate(bicarbonate: MilligramsPerLitre): MilligramsPerLitre {
  requireInRange("bicarbonate", bicarbonate, BICARBONATE_RANGE);
  return milligramsPerLitre((bicarbonate * CALCIUM_CARBONATE_EQUIVALENT) / MOLAR_MASS.bicarbonate);
}
