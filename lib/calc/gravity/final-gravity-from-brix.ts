import { requireInRange } from "../errors";
import { specificGravity, type DegreesBrix, type SpecificGravity } from "../units";
import { REFRACTOMETER_RANGE } from "./original-plato-from-brix";

/** Corrected original readings of the beers behind the fit, °Bx. */
export const FINAL_BRIX_RANGE = { unit: "°Bx", min: 8, max: 30 } as const;

/**
 * Estimates final gravity from refractometer readings before and after fermentation.
 *
 * Alcohol bends light too, so the second reading alone says nothing. A fit to measured beers: it answers "is it nearly
 * done", not "how strong is it"; a hydrometer does.
 *
 * @param a.originalBrix - Reading of the wort, °Bx, not corrected.
 * @param a.finalBrix - Reading of the beer, °Bx, not corrected.
 * @param a.correction - Factor of this instrument for wort; both readings are divided by it.
 * @returns Specific gravity 20/20, typically within 0.002.
 * @validRange Corrected original reading 8 to 30 °Bx, the final one not above it.
 * @throws {@link OutOfRangeError} when a reading, the factor or the result is outside its range.
 * @source Terrill 2011, cubic (docs/sources.md#terrill-2011)
 * @example
 * finalGravityFromBrix({ originalBrix: degreesBrix(12), finalBrix: degreesBrix(6), correction: 1 }); // 1.01168
 */
export function finalGravityFromBrix({
  originalBrix,
  finalBrix,
  correction,
}: {
  readonly originalBrix: DegreesBrix;
  readonly finalBrix: DegreesBrix;
  readonly correction: number;
}): SpecificGravity {
  requireInRange("wort correction", correction, REFRACTOMETER_RANGE.correction);
  const i = requireInRange("original reading", originalBrix / correction, FINAL_BRIX_RANGE);
  const f = requireInRange("final reading", finalBrix / correction, { unit: "°Bx", min: 0, max: i });
  return specificGravity(
    1 -
      0.0044993 * i +
      0.011774 * f +
      0.00027581 * i ** 2 -
      0.0012717 * f ** 2 -
      0.00000728 * i ** 3 +
      0.000063293 * f ** 3,
  );
}
