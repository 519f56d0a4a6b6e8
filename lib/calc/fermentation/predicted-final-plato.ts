import { requireInRange } from "../errors";
import { degreesPlato, type DegreesPlato } from "../units";
import { apparentAttenuationOf, type FermentablePart } from "./apparent-attenuation-of";

export const ORIGINAL_RANGE = { unit: "°P", min: 0, max: 35 } as const;

/**
 * Predicts the apparent extract of the finished beer from what its wort consists of.
 *
 * A prediction as good as the attenuation of the malt part, which mash and yeast decide within about ±4 points.
 *
 * @param a.originalPlato - Extract of the wort, °P.
 * @param a.parts - Shares of the extract and the apparent attenuation of each.
 * @returns Apparent final extract, °P; below 0 for beer lighter than water.
 * @validRange 0 to 35 °P, parts as for `apparentAttenuationOf`.
 * @throws {@link OutOfRangeError} when strength or a part is outside the valid range.
 * @source Mass balance with Balling's quotient (docs/sources.md#mass-balance, docs/sources.md#balling-1865)
 * @example
 * predictedFinalPlato({ originalPlato: degreesPlato(12), parts: [{ share: 1, attenuation: 0.75 }] }); // 3
 */
export function predictedFinalPlato({
  originalPlato,
  parts,
}: {
  readonly originalPlato: DegreesPlato;
  readonly parts: readonly FermentablePart[];
}): DegreesPlato {
  requireInRange("original extract", originalPlato, ORIGINAL_RANGE);
  return degreesPlato(originalPlato * (1 - apparentAttenuationOf(parts)));
}
