import { requireInRange } from "../errors";
import type { Bar, Celsius, VolumesCo2 } from "../units";
import { closedPressure } from "./closed-pressure";
import { SOLUBILITY_RANGE } from "./gauge-pressure";

/** What the maker states that a bottle or keg holds: a carbonation, a gauge pressure or both. */
export type Rating =
  { readonly rated: VolumesCo2; readonly ratedBar?: Bar } | { readonly rated?: VolumesCo2; readonly ratedBar: Bar };

/** Pressure in a closed bottle, or the refusal to fill it. */
export type BottlePressure =
  | { readonly ok: true; readonly gaugeBar: Bar }
  | {
      readonly ok: false;
      readonly reason: "above-rating";
      readonly gaugeBar: Bar;
      /** What was held against it; null where the maker states none. */
      readonly rated: VolumesCo2 | null;
      readonly ratedBar: Bar | null;
    };

/** Glass, plastic and kegs of the trade are all rated below 20 bar. */
export const RATED_RANGE = {
  volumes: SOLUBILITY_RANGE.volumes,
  bar: { unit: "bar", min: 0, max: 20 },
} as const;

/**
 * Finds the pressure in a closed bottle at the warmest place it will stand, and refuses more gas than it is made for.
 *
 * Bottles that burst injure. Only the maker's figure counts; a used, scratched or unmarked bottle holds less. A rating as
 * carbonation says nothing of warmth, so where the maker states a pressure give that: it is held against the warm bottle.
 *
 * @param a.volumes - Carbonation of the beer, volumes.
 * @param a.celsius - Warmest storage, °C.
 * @param a.rated - Carbonation that the maker of the bottle states, volumes.
 * @param a.ratedBar - Gauge pressure that the maker of the bottle or keg states, bar.
 * @returns Gauge pressure, bar, and whether the bottle is made for it; with two ratings it must keep to both.
 * @validRange 0 to 10 volumes, −2 to 45 °C, up to 20 bar.
 * @throws {@link OutOfRangeError} when carbonation or temperature is outside its range, or a rating is, or none is given.
 * @source Henry's law for beer (docs/sources.md#henry-co2)
 * @example
 * bottlePressure({ volumes: volumesCo2(2.5), celsius: celsius(30), rated: volumesCo2(3) }); // { ok: true, gaugeBar: 3.01 }
 */
export function bottlePressure(
  a: { readonly volumes: VolumesCo2; readonly celsius: Celsius } & Rating,
): BottlePressure {
  const gaugeBar = closedPressure(a);
  const { rated, ratedBar } = a;
  // Without any rating the first check is left to refuse.
  if (rated !== undefined || ratedBar === undefined) {
    requireInRange("rating of the bottle", rated ?? Number.NaN, RATED_RANGE.volumes);
  }
  if (ratedBar !== undefined) requireInRange("rated pressure", ratedBar, RATED_RANGE.bar);
  const holds = (rated === undefined || a.volumes <= rated) && (ratedBar === undefined || gaugeBar <= ratedBar);
  if (holds) return { ok: true, gaugeBar };
  return { ok: false, reason: "above-rating", gaugeBar, rated: rated ?? null, ratedBar: ratedBar ?? null };
}
