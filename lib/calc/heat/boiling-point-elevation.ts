import { requireInRange } from "../errors";
import type { DegreesPlato } from "../units";

export const ELEVATION_RANGE = { unit: "°P", min: 0, max: 35 } as const;

const EBULLIOSCOPIC_K_KG_PER_MOL = 0.512;
const DISACCHARIDE_G_PER_MOL = 342.3;

/**
 * Finds by how much wort boils hotter than water.
 *
 * The extract is taken as a disaccharide, near the mean of wort's sugars and dextrins.
 *
 * @param extract - Extract, °P.
 * @returns Elevation, K.
 * @validRange 0 to 35 °P.
 * @throws {@link OutOfRangeError} when `extract` is outside the valid range.
 * @source Ebullioscopic law, constant of water 0.512 K·kg/mol (docs/sources.md#crc-handbook)
 * @example
 * boilingPointElevation(degreesPlato(12)); // 0.204
 */
export function boilingPointElevation(extract: DegreesPlato): number {
  requireInRange("extract", extract, ELEVATION_RANGE);
  const molality = (1000 * extract) / (DISACCHARIDE_G_PER_MOL * (100 - extract));
  return EBULLIOSCOPIC_K_KG_PER_MOL * molality;
}
