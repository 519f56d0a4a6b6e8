import { attenuationShift, MASH_CURVE_RANGE } from "../mash";
import type { Phase } from "./ledger";
import { mashCurveOf } from "./mash-curve-of";

/** What the temperatures of the mash made of the malt. */
export interface MashedMalt {
  /** Share of the starch that was converted. */
  readonly converted: number;
  /** Added to the apparent attenuation of an ordinary mash; 0 where too little was converted to say. */
  readonly shift: number;
  /** Its standard uncertainty. */
  readonly shiftSd: number;
}

/**
 * Follows the enzymes through the mash as this kettle runs it.
 *
 * @returns Conversion and the shift of attenuation; null without a rest.
 * @source docs/sources.md#brandam-2003, through `fermentability`
 */
export function mashedMalt(phases: readonly Phase[]): MashedMalt | null {
  // A heater that takes days to the next rest, or never leaves the frost: the enzymes are done or asleep.
  const { minute: times, celsius: warmths } = MASH_CURVE_RANGE;
  const curve = mashCurveOf({ phases }).map(
    ([minute, celsius]) => [Math.min(minute, times.max), Math.max(celsius, warmths.min)] as const,
  );
  if (curve.length === 0) return null;
  const shift = attenuationShift({ curve });
  const { converted } = shift;
  return shift.ok ? { converted, shift: shift.shift, shiftSd: shift.sd } : { converted, shift: 0, shiftSd: 0 };
}
