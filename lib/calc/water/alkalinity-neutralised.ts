import { requireInRange } from "../errors";
import type { Celsius, Ph } from "../units";
import { carbonateFractions } from "./carbonate-fractions";

/** Below pH 4.3 a water has no alkalinity to speak of. */
export const ALKALINE_PH_RANGE = { unit: "pH", min: 4.3, max: 12 } as const;

/**
 * Gives the share of a water's carbonate alkalinity that acid has used up when the pH has moved.
 *
 * No carbon dioxide escapes; where it does, all of the alkalinity is used up below pH 8.
 *
 * @returns Share of the alkalinity at `fromPh`, at most 1; below zero where the pH rises and alkalinity has to be added.
 * @validRange pH 4.3 to 12 on both sides, 0 to 90 °C.
 * @throws {@link OutOfRangeError} when a pH or the temperature is outside the valid range.
 * @source Plummer and Busenberg 1982 (docs/sources.md#plummer-busenberg-1982)
 * @example
 * alkalinityNeutralised({ fromPh: ph(8), toPh: ph(5.4), celsius: celsius(25) }); // 0.898
 */
export function alkalinityNeutralised({
  fromPh,
  toPh,
  celsius,
}: {
  readonly fromPh: Ph;
  readonly toPh: Ph;
  readonly celsius: Celsius;
}): number {
  requireInRange("pH before", fromPh, ALKALINE_PH_RANGE);
  requireInRange("pH after", toPh, ALKALINE_PH_RANGE);
  return 1 - equivalentsPerCarbon(toPh, celsius) / equivalentsPerCarbon(fromPh, celsius);
}

function equivalentsPerCarbon(ph: Ph, celsius: Celsius): number {
  const { bicarbonate, carbonate } = carbonateFractions({ ph, celsius });
  return bicarbonate + 2 * carbonate;
}
