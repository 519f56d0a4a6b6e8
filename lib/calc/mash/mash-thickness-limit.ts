import { requireInRange } from "../errors";
import { kilograms, litres, litresPerKilogram, type Kilograms, type Litres, type LitresPerKilogram } from "../units";
import { GRAIN_DISPLACEMENT } from "./mash-volume";

export const MASHED_GRIST_RANGE = { ...kilograms.range, min: 0.001 } as const;

export type MashThicknessLimit =
  | {
      readonly ok: true;
      /** Water of the thickest mash that can be stirred, and of the fullest that stays below the rim. */
      readonly leastWater: Litres;
      readonly mostWater: Litres;
      /** The same as water per kilogram of grist. */
      readonly thickest: LitresPerKilogram;
      readonly thinnest: LitresPerKilogram;
    }
  | {
      readonly ok: false;
      readonly reason: "mash-over-the-rim";
      /** Grist that fits with the thickest mash. */
      readonly mostGrist: Kilograms;
    };

/**
 * Finds between which thicknesses a grist can be mashed: stirrable at one end, below the rim at the other.
 *
 * The grain takes up 0.67 L/kg beside its water. A mash thinner than 20 L/kg is none, so the range ends there.
 *
 * @param a.grist - Grain, kg.
 * @param a.capacity - Space for the mash, L.
 * @param a.thickest - Least water that still stirs, L/kg.
 * @returns Least and most water, L and L/kg; or the grist that would fit.
 * @validRange Grist from 1 g.
 * @throws {@link OutOfRangeError} when an argument is outside its range.
 * @source Common practice, 0.67 L/kg or 0.08 US gal/lb (docs/sources.md#trade-practice)
 * @example
 * mashThicknessLimit({ grist: kilograms(5), capacity: litres(20), thickest: litresPerKilogram(2.2) });
 * // { ok: true, leastWater: 11, mostWater: 16.65, thickest: 2.2, thinnest: 3.33 }
 */
export function mashThicknessLimit({
  grist,
  capacity,
  thickest,
}: {
  readonly grist: Kilograms;
  readonly capacity: Litres;
  readonly thickest: LitresPerKilogram;
}): MashThicknessLimit {
  requireInRange("grist", grist, MASHED_GRIST_RANGE);
  requireInRange("mash capacity", capacity, litres.range);
  requireInRange("thickest mash", thickest, litresPerKilogram.range);
  const thinnest = Math.min(litresPerKilogram.range.max, capacity / grist - GRAIN_DISPLACEMENT);
  if (thinnest < thickest) {
    const mostGrist = kilograms(capacity / (thickest + GRAIN_DISPLACEMENT));
    return { ok: false, reason: "mash-over-the-rim", mostGrist };
  }
  return {
    ok: true,
    leastWater: litres(Math.min(thickest * grist, capacity)),
    mostWater: litres(thinnest * grist),
    thickest,
    thinnest: litresPerKilogram(thinnest),
  };
}
