import { requireInRange } from "../errors";
import { fraction, type Fraction } from "../units";

/** A part of a wort's extract and how far yeast takes it. */
export interface FermentablePart {
  /** Share of the extract of the wort, by mass. */
  readonly share: number;
  /** Apparent attenuation of this part alone; plain sugar is about 1.22, because alcohol is lighter than water. */
  readonly attenuation: number;
}

export const ATTENUATION_RANGE = { unit: "", min: 0, max: 1.25 } as const;

/** Shares come out of divisions; they add up to one only nearly. */
const WHOLE = { unit: "", min: 1 - 1e-6, max: 1 + 1e-6 } as const;

/**
 * Gives the apparent attenuation of a wort from its parts: the mean, weighted by extract.
 *
 * Real attenuation is a mean by mass, and Balling makes apparent attenuation proportional to it, so the mean holds for both.
 *
 * @param parts - Shares, which add up to 1, and the apparent attenuation of each.
 * @returns Apparent attenuation as a fraction; 1 also for beer lighter than water, which reads below 0 °P.
 * @validRange Shares 0 to 1 that add up to 1, attenuation 0 to 1.25.
 * @throws {@link OutOfRangeError} when a share, their sum or an attenuation is outside the valid range.
 * @source Mass balance with Balling's quotient (docs/sources.md#mass-balance, docs/sources.md#balling-1865)
 * @example
 * apparentAttenuationOf([{ share: 0.9, attenuation: 0.75 }, { share: 0.1, attenuation: 1.22 }]); // 0.797
 */
export function apparentAttenuationOf(parts: readonly FermentablePart[]): Fraction {
  let shares = 0;
  let attenuated = 0;
  for (const { share, attenuation } of parts) {
    shares += requireInRange("share of the extract", share, fraction.range);
    attenuated += share * requireInRange("attenuation", attenuation, ATTENUATION_RANGE);
  }
  requireInRange("sum of the shares", shares, WHOLE);
  return fraction(Math.min(1, attenuated));
}
