import type { Millilitres, Ph } from "../units";
import { acidToReach, type AcidToReach } from "./acid-to-reach";
import type { AcidSolution } from "./acids";
import { hasGrist, MASH_PH_SPAN, type Mash } from "./mash-ph";
import { protonBalance } from "./proton-balance";

/** A mash, and the acid that is to bring it to a pH. */
export interface MashToAcidify extends Mash {
  readonly targetPh: Ph;
  readonly acid: AcidSolution;
  /** The most of it that the brewer will add. */
  readonly mostMl: Millilitres;
}

export type AcidFor = AcidToReach | { readonly ok: false; readonly reason: "no-grist" };

/**
 * Finds how much of an acid brings a mash to a pH.
 *
 * The balance of `mashPh` read the other way: the acid missing at the target, over what a millilitre gives off there.
 * Concentrated acids burn: pour acid into water, never the reverse, wear goggles and gloves, and use food grade only.
 *
 * @returns Acid, mL, as exact as the balance; or the pH that the mash has anyway, or reaches with the most.
 * @validRange Targets of pH 3 to 10.
 * @throws {@link OutOfRangeError} when the target or a figure of the mash or the acid is outside its range.
 * @source Balance of protons after deLange 2015, MBAA Tech. Quart. 52 (docs/sources.md#delange-2015)
 * @example
 * acidFor({ ...mash, targetPh: ph(5.4), acid: ACID_SOLUTIONS.lactic88, mostMl: millilitres(20) }); // { ok: true, ml: 6.6 }
 */
export function acidFor(mash: MashToAcidify): AcidFor {
  const balance = protonBalance(mash);
  if (!hasGrist(balance)) return { ok: false, reason: "no-grist" };
  return acidToReach(balance, mash, MASH_PH_SPAN);
}
