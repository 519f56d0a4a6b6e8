import { requireInRange } from "../errors";
import { milligramsPerLitre, type MilligramsPerLitre } from "../units";

export type SulfateToChloride =
  { readonly ok: true; readonly ratio: number } | { readonly ok: false; readonly reason: "no-chloride" };

/** Below this no laboratory tells chloride from none. */
const LEAST_CHLORIDE = 0.001;

/**
 * Gives the ratio of sulfate to chloride by mass, by which common practice judges whether a water favours hops or malt.
 *
 * @returns The ratio; or that there is no chloride to compare with.
 * @validRange 0 to 10 000 mg/L of each; no ratio below 0.001 mg/L of chloride.
 * @throws {@link OutOfRangeError} when a concentration is outside the valid range.
 * @source Common practice, no source (docs/sources.md#trade-practice)
 * @example
 * sulfateToChloride({ sulfate: milligramsPerLitre(150), chloride: milligramsPerLitre(75) }); // { ok: true, ratio: 2 }
 */
export function sulfateToChloride({
  sulfate,
  chloride,
}: {
  readonly sulfate: MilligramsPerLitre;
  readonly chloride: MilligramsPerLitre;
}): SulfateToChloride {
  requireInRange("sulfate", sulfate, milligramsPerLitre.range);
  requireInRange("chloride", chloride, milligramsPerLitre.range);
  return chloride < LEAST_CHLORIDE ? { ok: false, reason: "no-chloride" } : { ok: true, ratio: sulfate / chloride };
}
