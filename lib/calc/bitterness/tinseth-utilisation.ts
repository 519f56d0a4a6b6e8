import { requireInRange } from "../errors";
import { fraction, type Fraction, type Minutes, type SpecificGravity } from "../units";

export const TINSETH_RANGE = {
  sg: { unit: "SG", min: 1, max: 1.16 },
  minutes: { unit: "min", min: 0, max: 240 },
} as const;

/**
 * Gives the share of the alpha acids that a boil brings into the beer as iso-alpha acids (Tinseth).
 *
 * @returns Utilisation, fraction.
 * @validRange SG 1.000 to 1.160 and 0 to 240 min; the published table covers 1.030 to 1.130 and up to 120 min, and the
 *   equation levels off smoothly beyond.
 * @throws {@link OutOfRangeError} when gravity or time is outside the valid range.
 * @source Tinseth 1997, hop utilisation table and equation (docs/sources.md#tinseth-1997)
 * @example
 * tinsethUtilisation({ sg: specificGravity(1.05), minutes: minutes(60) }); // 0.231
 */
export function tinsethUtilisation({
  sg,
  minutes,
}: {
  readonly sg: SpecificGravity;
  readonly minutes: Minutes;
}): Fraction {
  requireInRange("gravity", sg, TINSETH_RANGE.sg);
  requireInRange("boil time", minutes, TINSETH_RANGE.minutes);
  return fraction((1.65 * 0.000125 ** (sg - 1) * (1 - Math.exp(-0.04 * minutes))) / 4.15);
}
