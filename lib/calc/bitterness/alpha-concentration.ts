import { requireInRange } from "../errors";
import { fraction, grams as gramsOf, ibu, type Fraction, type Grams, type Ibu, type Litres } from "../units";

/** Least volume that a bitterness is worked out for. */
export const HOPPED_WORT_RANGE = { unit: "L", min: 0.001, max: 100000 } as const;

/**
 * Iso-alpha acids in the wort: the share of the alpha acids that dissolves and stays, over the volume.
 *
 * @returns Bitterness, IBU.
 */
export function alphaConcentration(
  a: { readonly alphaFraction: Fraction; readonly grams: Grams; readonly litres: Litres },
  utilisation: number,
): Ibu {
  requireInRange("alpha acids", a.alphaFraction, fraction.range);
  requireInRange("hops", a.grams, gramsOf.range);
  requireInRange("wort", a.litres, HOPPED_WORT_RANGE);
  return ibu((utilisation * a.alphaFraction * a.grams * 1000) / a.litres);
}
