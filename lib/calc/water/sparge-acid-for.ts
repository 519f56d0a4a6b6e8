import type { Millilitres, Ph } from "../units";
import { acidToReach, type AcidToReach } from "./acid-to-reach";
import type { AcidSolution } from "./acids";
import type { AcidAddition } from "./ions-from-acids";
import type { Liquor } from "./liquor";
import { protonBalance } from "./proton-balance";
import { WATER_PH_SPAN } from "./ph-of-water";

/**
 * Finds how much of an acid brings sparge water to a pH, so that it washes no tannin out of the husks.
 *
 * Common practice is a target of 5.5 to 6. Concentrated acids burn: pour acid into water, never water into acid, wear
 * goggles and gloves, and use food grade only.
 *
 * @returns Acid, mL; or the pH that the water has anyway, or reaches with the most.
 * @validRange Targets of pH 2 to 12.6.
 * @throws {@link OutOfRangeError} when the target or a figure of the water or the acid is outside its range.
 * @source Plummer and Busenberg 1982 (docs/sources.md#plummer-busenberg-1982)
 * @example
 * spargeAcidFor({ water: tapWater, acids: [], acid: ACID_SOLUTIONS.phosphoric10, targetPh: ph(5.6), mostMl: millilitres(50) });
 */
export function spargeAcidFor({
  water,
  acids,
  ...wanted
}: {
  readonly water: Liquor;
  readonly acids: readonly AcidAddition[];
  readonly acid: AcidSolution;
  readonly targetPh: Ph;
  readonly mostMl: Millilitres;
}): AcidToReach {
  const hardnessReaction = { calcium: 0, magnesium: 0 };
  return acidToReach(protonBalance({ water, grist: [], hardnessReaction, acids }), wanted, WATER_PH_SPAN);
}
