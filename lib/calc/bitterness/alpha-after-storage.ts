import { requireInRange } from "../errors";
import { days as daysOf, fraction, type Celsius, type Days, type Fraction } from "../units";

export const STORAGE_RANGE = {
  celsius: { unit: "°C", min: -30, max: 40 },
  loss: { unit: "", min: 0, max: 0.95 },
} as const;

/**
 * Gives the alpha acids that stored hops still have.
 *
 * They fall exponentially, half as fast for every 15 K colder, and slower the less air comes in.
 *
 * @param a.alphaFraction - Alpha acids when fresh, fraction of the hops.
 * @param a.lossIn6Months - Share of them that the variety loses in 180 days at 20 °C in the open.
 * @param a.days - Storage, days.
 * @param a.celsius - Storage temperature, °C.
 * @param a.storageFactor - 1 loose, 0.75 in a sealed bag, 0.5 under vacuum or inert gas behind a barrier.
 * @returns Alpha acids now, fraction of the hops.
 * @validRange −30 to 40 °C, losses up to 0.95.
 * @throws {@link OutOfRangeError} when an argument is outside its range.
 * @source Garetz 1994, Zymurgy 17(4); storage factors from memory (docs/sources.md#garetz-1994)
 * @example
 * alphaAfterStorage({ ...hops, alphaFraction: fraction(0.1), lossIn6Months: fraction(0.3), days: days(180) }); // 0.07 at 20 °C
 */
export function alphaAfterStorage({
  alphaFraction,
  lossIn6Months,
  days,
  celsius,
  storageFactor,
}: {
  readonly alphaFraction: Fraction;
  readonly lossIn6Months: Fraction;
  readonly days: Days;
  readonly celsius: Celsius;
  readonly storageFactor: Fraction;
}): Fraction {
  requireInRange("alpha acids", alphaFraction, fraction.range);
  requireInRange("loss in six months", lossIn6Months, STORAGE_RANGE.loss);
  requireInRange("storage time", days, daysOf.range);
  requireInRange("storage temperature", celsius, STORAGE_RANGE.celsius);
  requireInRange("storage factor", storageFactor, fraction.range);
  const perDay = -Math.log(1 - lossIn6Months) / 180;
  const temperatureFactor = 2 ** ((celsius - 20) / 15);
  return fraction(alphaFraction * Math.exp(-perDay * temperatureFactor * storageFactor * days));
}
