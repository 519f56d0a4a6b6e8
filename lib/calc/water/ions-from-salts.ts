import { requireInRange } from "../errors";
import { grams as gramsOf, type Litres } from "../units";
import { IONS, mapIons, type Ion, type Ions } from "./ions";
import { MOLAR_MASS } from "./molar-mass";
import { SALTS, SALT_CHEMISTRY, type SaltGrams } from "./salts";

export const TREATED_WATER_RANGE = { unit: "L", min: 0.001, max: 100000 } as const;

/**
 * Gives the ions that salts add to a volume of water.
 *
 * Stoichiometry only: the salts are taken as pure, in the hydrate named, and fully dissolved; chalk and slaked lime
 * with all their base turned into bicarbonate, which needs carbon dioxide that a plain kettle of water may not hold.
 *
 * @returns Concentrations added, mg/L.
 * @validRange More than 0.001 L of water, and at most 10 000 mg/L of each ion.
 * @throws {@link OutOfRangeError} when the volume, a mass or a resulting concentration is outside its range.
 * @source IUPAC 2021, abridged standard atomic weights (docs/sources.md#iupac-2021)
 * @example
 * ionsFromSalts({ litres: litres(1), grams: { gypsum: grams(1) } }).calcium; // 232.8
 */
export function ionsFromSalts({ litres, grams }: { readonly litres: Litres; readonly grams: SaltGrams }): Ions {
  requireInRange("water", litres, TREATED_WATER_RANGE);
  const milligrams: Record<Ion, number> = {
    calcium: 0,
    magnesium: 0,
    sodium: 0,
    sulfate: 0,
    chloride: 0,
    bicarbonate: 0,
  };
  for (const salt of SALTS) {
    const weighed = grams[salt];
    if (weighed === undefined) continue;
    const { molarMass, gives } = SALT_CHEMISTRY[salt];
    const millimoles = (1000 * requireInRange(salt, weighed, gramsOf.range)) / molarMass;
    for (const ion of IONS) milligrams[ion] += millimoles * (gives[ion] ?? 0) * MOLAR_MASS[ion];
  }
  return mapIons((ion) => milligrams[ion] / litres);
}
