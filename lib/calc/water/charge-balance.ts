import { requireInRange } from "../errors";
import { milliequivalentsPerLitre, milligramsPerLitre, type MilliequivalentsPerLitre } from "../units";
import type { Ion, Ions } from "./ions";
import { MOLAR_MASS, VALENCE } from "./molar-mass";

/** How far the charges of a water analysis cancel. */
export interface ChargeBalance {
  readonly cations: MilliequivalentsPerLitre;
  readonly anions: MilliequivalentsPerLitre;
  /** (cations − anions) / (cations + anions); within ±0.05 is a sound analysis of ordinary water. */
  readonly relativeError: number;
}

const CATIONS = ["calcium", "magnesium", "sodium"] as const satisfies readonly Ion[];
const ANIONS = ["sulfate", "chloride", "bicarbonate"] as const satisfies readonly Ion[];

/**
 * Weighs the positive against the negative charges of a water analysis.
 *
 * @param ions - The six ions, mg/L.
 * @returns Both sums, mEq/L, and the signed relative error as a fraction; pure water balances.
 * @validRange Up to 1000 mEq/L of either sign.
 * @throws {@link OutOfRangeError} when an ion or a sum is outside its range.
 * @source Standard Methods for the Examination of Water and Wastewater, 1030 E (docs/sources.md#standard-methods-1030)
 * @example
 * chargeBalance(tapWater); // { cations: 6.07, anions: 5.82, relativeError: 0.021 }
 */
export function chargeBalance(ions: Ions): ChargeBalance {
  const cations = sumOfCharges(ions, CATIONS);
  const anions = sumOfCharges(ions, ANIONS);
  const all = cations + anions;
  return { cations, anions, relativeError: all === 0 ? 0 : (cations - anions) / all };
}

function sumOfCharges(ions: Ions, names: readonly Ion[]): MilliequivalentsPerLitre {
  let mEqL = 0;
  for (const ion of names) {
    mEqL += (requireInRange(ion, ions[ion], milligramsPerLitre.range) * VALENCE[ion]) / MOLAR_MASS[ion];
  }
  return milliequivalentsPerLitre(mEqL);
}
