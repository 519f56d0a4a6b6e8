import { requireInRange } from "../errors";
import { milligramsPerLitre, type MilligramsPerLitre } from "../units";
import { CALCIUM_CARBONATE_EQUIVALENT, MOLAR_MASS } from "./molar-mass";

export const ALKALINITY_RANGE = { unit: "mg/L CaCO3", min: 0, max: 8000 } as const;

/**
 * Expresses alkalinity in mg/L of calcium carbonate as bicarbonate, equivalent for equivalent.
 *
 * @param alkalinity - Alkalinity, mg/L as CaCO3.
 * @returns Bicarbonate, mg/L.
 * @validRange 0 to 8000 mg/L as CaCO3, below pH 8.3.
 * @throws {@link OutOfRangeError} when `alkalinity` is outside the valid range.
 * @source IUPAC 2021, abridged standard atomic weights (docs/sources.md#iupac-2021)
 * @example
 * bicarbonateFromAlkalinity(milligramsPerLitre(100)); // 121.93
 */
export function bicarbonateFromAlkalinity(alkalinity: MilligramsPerLitre): MilligramsPerLitre {
  requireInRange("alkalinity", alkalinity, ALKALINITY_RANGE);
  return milligramsPerLitre((alkalinity * MOLAR_MASS.bicarbonate) / CALCIUM_CARBONATE_EQUIVALENT);
}
