import { requireInRange } from "../errors";
import { milliequivalents, millilitres, ph, type Milliequivalents, type Millilitres, type Ph } from "../units";
import { meanCharge, millimolesPerMillilitre, protonsAt, type AcidSolution } from "./acids";

/**
 * Gives the acidity that a measured acid brings to a mash or a water of a pH.
 *
 * A weak acid gives off more of its protons the higher the pH, so the same millilitres count for less in a sour mash.
 *
 * Concentrated acids burn skin and eyes and can splash: pour acid into water, never water into acid, wear goggles and
 * gloves, and use food grade only.
 *
 * @returns Protons given off, mEq.
 * @validRange pH 0 to 14, up to 1000 L of acid of 0.1 to 100 %; constants of 25 °C.
 * @throws {@link OutOfRangeError} when the volume, the pH, the strength or the density is outside its range.
 * @source CRC Handbook, dissociation constants at 25 °C (docs/sources.md#crc-handbook)
 * @example
 * acidMilliequivalents({ acid: ACID_SOLUTIONS.lactic88, ml: millilitres(1), toPh: ph(5.4) }); // 11.48
 */
export function acidMilliequivalents({
  acid,
  ml,
  toPh,
}: {
  readonly acid: AcidSolution;
  readonly ml: Millilitres;
  readonly toPh: Ph;
}): Milliequivalents {
  requireInRange("volume of acid", ml, millilitres.range);
  requireInRange("pH", toPh, ph.range);
  return milliequivalents(ml * millimolesPerMillilitre(acid) * meanCharge(acid.acid, protonsAt(toPh)));
}
