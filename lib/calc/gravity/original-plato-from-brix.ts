import { requireInRange } from "../errors";
import { degreesPlato, type DegreesBrix, type DegreesPlato } from "../units";
import { WORT_RANGE } from "./wort-density";

export const REFRACTOMETER_RANGE = {
  brix: { unit: "°Bx", min: 0, max: 38 },
  correction: { unit: "", min: 0.95, max: 1.1 },
} as const;

/**
 * Converts a refractometer reading of unfermented wort to extract.
 *
 * Malt sugars bend light a little more than sucrose, so a refractometer reads wort high by a factor of its own.
 *
 * @param a.brix - Reading, °Bx, at 20 °C or compensated by the instrument.
 * @param a.correction - Factor of this instrument for wort; 1.04 is common practice, 1.00 to 1.06 is found.
 * @returns Extract, °P.
 * @validRange Readings 0 to 38 °Bx, factors 0.95 to 1.1, results up to 35 °P.
 * @throws {@link OutOfRangeError} when reading, factor or result is outside its range.
 * @source Common practice (docs/sources.md#trade-practice)
 * @example
 * originalPlatoFromBrix({ brix: degreesBrix(12.48), correction: 1.04 }); // 12
 */
export function originalPlatoFromBrix({
  brix,
  correction,
}: {
  readonly brix: DegreesBrix;
  readonly correction: number;
}): DegreesPlato {
  requireInRange("refractometer reading", brix, REFRACTOMETER_RANGE.brix);
  requireInRange("wort correction", correction, REFRACTOMETER_RANGE.correction);
  return degreesPlato(requireInRange("extract", brix / correction, WORT_RANGE.plato));
}
