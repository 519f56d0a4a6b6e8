import { requireInRange } from "../errors";
import { percent, type Minutes, type Percent } from "../units";
import { TINSETH_RANGE } from "./tinseth-utilisation";

/**
 * Gives the share of the alpha acids that a boil brings into the beer, before the gravity adjustment (Rager).
 *
 * @param minutes - Time in the boil, min.
 * @returns Utilisation, %; the fit runs through the steps of the printed table and gives 5 % to hops not boiled at all.
 * @validRange 0 to 240 min; the table ends at 60 min.
 * @throws {@link OutOfRangeError} when `minutes` is outside the valid range.
 * @source Rager 1990, Zymurgy 13(4), as the usual fit of its step table (docs/sources.md#rager-1990)
 * @example
 * ragerUtilisation(minutes(60)); // 30.8
 */
export function ragerUtilisation(minutes: Minutes): Percent {
  requireInRange("boil time", minutes, TINSETH_RANGE.minutes);
  return percent(18.11 + 13.86 * Math.tanh((minutes - 31.32) / 18.27));
}
