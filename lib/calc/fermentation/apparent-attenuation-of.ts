import { requireInRange } from "../errors";
import { MOST_ATTENUATION } from "../alcohol";
import { attenuation, fraction, type Fraction } from "../units";

/** A part of a wort's extract and how far yeast takes it. */
export interface FermentablePart {
  /** Share of the extract of the wort, by mass. */
  readonly share: number;
  /** Apparent attenuation of this part alone; plain sugar is about 1.22, because alcohol is lighter than water. */
  readonly attenuation: number;
}

/** From unfermentable to plain sugar, of which nothing is left. */
export const ATTENUATION_RANGE = { unit: "", min: 0, max: MOST_ATTENUATION } as const;

/** Shares come out of divisions; they add up to one only nearly. */
export const WHOLE = { unit: "", min: 1 - 1e-6, max: 1 + 1e-6 } as const;

/**
 * Gives the apparent attenuation of a wort from its parts: the mean, weighted by extract.
 *
 * Real attenuation is a mean by mass, and Balling makes apparent attenuation proportional to it, so the mean holds for both.
 *
 * @param parts - Shares, which add up to 1, and the apparent attenuation of each.
 * @returns Apparent attenuation as a fraction; above 1 for beer lighter than water, which reads below 0 °P.
 * @validRange Shares 0 to 1 that add up to 1, attenuation 0 to 1.2207.
 * @throws {@link OutOfRangeError} when a share, their sum or an attenuation is outside the valid range.
 * @source Mass balance with Balling's quotient (docs/sources.md#mass-balance, docs/sources.md#balling-1865)
 * @example
 * apparentAttenuationOf([{ share: 0.9, attenuation: 0.75 }, { share: 0.1, attenuation: 1.22 }]); // 0.797
 */
export function apparentAttenuationOf(parts: readonly FermentablePart[]): Fraction {
  let shares = 0;
  let attenuated = 0;
  for (const part of parts) {
    shares += requireInRange("share of the extract", part.share, fraction.range);
    attenuated += part.share * requireInRange("attenuation", part.attenuation, ATTENUATION_RANGE);
  }
  requireInRange("sum of the shares", shares, WHOLE);
  // The shares may add up to a hair more than one.
  return attenuation(Math.min(MOST_ATTENUATION, attenuated));
}
