import { requireInRange } from "../errors";
import { millilitres, type Litres, type Millilitres } from "../units";
import { millimolesPerMillilitre, type AcidSolution } from "./acids";
import { mapIons, type Ions } from "./ions";
import { TREATED_WATER_RANGE } from "./ions-from-salts";
import { MOLAR_MASS } from "./molar-mass";

/** Acid that has been measured out. */
export interface AcidAddition {
  readonly acid: AcidSolution;
  readonly ml: Millilitres;
}

/**
 * Gives the chloride and sulfate that hydrochloric and sulfuric acid leave in a water.
 *
 * Lactate, phosphate and citrate are not among the six ions and leave nothing here. What the acid takes from the
 * alkalinity belongs to the pH and is found by `phOfWater` and `mashPh`.
 *
 * @returns Concentrations added, mg/L.
 * @validRange 0.001 to 100 000 L of water, at most 10 000 mg/L of each ion.
 * @throws {@link OutOfRangeError} when a volume, the acid or a resulting concentration is outside its range.
 * @source IUPAC 2021, abridged standard atomic weights (docs/sources.md#iupac-2021)
 * @example
 * ionsFromAcids({ litres: litres(10), acids: [{ acid: ACID_SOLUTIONS.hydrochloric10, ml: millilitres(10) }] }).chloride; // 101.9
 */
export function ionsFromAcids({
  litres,
  acids,
}: {
  readonly litres: Litres;
  readonly acids: readonly AcidAddition[];
}): Ions {
  requireInRange("water", litres, TREATED_WATER_RANGE);
  const millimoles = { hydrochloric: 0, sulfuric: 0 };
  for (const { acid, ml } of acids) {
    const added = requireInRange("volume of acid", ml, millilitres.range) * millimolesPerMillilitre(acid);
    if (acid.acid === "hydrochloric" || acid.acid === "sulfuric") millimoles[acid.acid] += added;
  }
  return mapIons((ion) => {
    if (ion === "chloride") return (millimoles.hydrochloric * MOLAR_MASS.chloride) / litres;
    if (ion === "sulfate") return (millimoles.sulfuric * MOLAR_MASS.sulfate) / litres;
    return 0;
  });
}
