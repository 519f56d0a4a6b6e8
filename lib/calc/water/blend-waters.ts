import { OutOfRangeError, requireInRange } from "../errors";
import { litres as litresOf, type Litres } from "../units";
import { mapIons, type Ions } from "./ions";
import { requireIons } from "./require-ions";

/** One of the waters that are mixed. */
export interface WaterPart {
  readonly litres: Litres;
  readonly ions: Ions;
}

/**
 * Mixes waters: each ion is the mean of the parts, weighted by volume.
 *
 * @param parts - The waters, L and mg/L each.
 * @returns Concentrations of the blend, mg/L.
 * @validRange At least one part with a volume above zero.
 * @throws {@link OutOfRangeError} when a part is outside its range or the whole volume is zero.
 * @source Mass balance
 * @example
 * blendWaters([{ litres: litres(6), ions: tapWater }, { litres: litres(4), ions: deionised }]).calcium; // 48 from 80
 */
export function blendWaters(parts: readonly WaterPart[]): Ions {
  let total = 0;
  for (const part of parts) {
    total += requireInRange("water", part.litres, litresOf.range);
    requireIons(part.ions);
  }
  if (!(total > 0)) throw new OutOfRangeError("blended water", total, { ...litresOf.range, min: 0.001 });
  return mapIons((ion) => parts.reduce((sum, part) => sum + part.litres * part.ions[ion], 0) / total);
}
