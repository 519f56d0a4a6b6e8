import { requireInRange } from "../errors";
import { fraction, pointsPerPoundGallon, type Fraction, type PointsPerPoundGallon } from "../units";

/** A pound of sucrose made up to a US gallon at 20 °C. */
const SUCROSE_POINTS = 46.2;

/**
 * Converts the extract of an ingredient to the points that US tables print.
 *
 * @param extract - Extract as a fraction of mass, as is; sucrose is 1.
 * @returns Gravity points × US gallon for each pound; one such point is 8.3454 L·°/kg.
 * @validRange 0 to 1.
 * @throws {@link OutOfRangeError} when `extract` is outside the valid range.
 * @source Density of sucrose solutions (docs/sources.md#nbs-440-1942), rounded as the trade does
 * @example
 * pointsPerPoundGallonFromExtract(fraction(0.8)); // 36.96
 */
export function pointsPerPoundGallonFromExtract(extract: Fraction): PointsPerPoundGallon {
  return pointsPerPoundGallon(SUCROSE_POINTS * requireInRange("extract", extract, fraction.range));
}
