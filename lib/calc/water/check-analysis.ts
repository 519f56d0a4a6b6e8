import { milliequivalentsPerLitre, type MilliequivalentsPerLitre } from "../units";
import { chargeBalance } from "./charge-balance";
import type { Ions } from "./ions";

/** How well the charges of an analysis cancel. */
export interface AnalysisCheck {
  /** `sound` meets the standard; `fair` is within 5 % as brewers ask; `doubtful` has an ion wrong or left out. */
  readonly verdict: "sound" | "fair" | "doubtful";
  /** The side that has too little. */
  readonly missing: "cations" | "anions" | "none";
  readonly difference: MilliequivalentsPerLitre;
  /** What the standard allows for a water of this strength. */
  readonly allowed: MilliequivalentsPerLitre;
}

/** mEq/L of anions up to which the step of the standard holds. */
const WEAK = 3;
const MIDDLING = 10;

const FAIR = 0.05;

/**
 * Judges an analysis of water by its charges: those of opposite sign have to cancel.
 *
 * Water reports list averages of a year, so a doubtful one is often ions of different days. Potassium and nitrate are not
 * counted here and leave a small gap in farm country.
 *
 * @returns A verdict, the gap and the gap that the standard allows, mEq/L.
 * @validRange 0 to 10 000 mg/L of each ion, up to 1000 mEq/L of either sign.
 * @throws {@link OutOfRangeError} when an ion or a sum is outside its range.
 * @source Standard Methods for the Examination of Water and Wastewater, 1030 E (docs/sources.md#standard-methods-1030)
 * @example
 * checkAnalysis(tapWater); // { verdict: "fair", missing: "anions", difference: 0.249, allowed: 0.238 }
 */
export function checkAnalysis(ions: Ions): AnalysisCheck {
  const { cations, anions, relativeError } = chargeBalance(ions);
  const difference = Math.abs(cations - anions);
  const allowed = allowedFor(anions, cations + anions);
  const otherwise = Math.abs(relativeError) <= FAIR ? "fair" : "doubtful";
  return {
    verdict: difference <= allowed ? "sound" : otherwise,
    missing: difference === 0 ? "none" : cations > anions ? "anions" : "cations",
    difference: milliequivalentsPerLitre(difference),
    allowed: milliequivalentsPerLitre(allowed),
  };
}

function allowedFor(anions: number, all: number): number {
  if (anions <= WEAK) return 0.2;
  return anions <= MIDDLING ? 0.02 * all : 0.05 * all;
}
