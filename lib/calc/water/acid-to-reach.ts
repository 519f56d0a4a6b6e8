import { requireInRange } from "../errors";
import { milliequivalents, millilitres, ph, type Milliequivalents, type Millilitres, type Ph } from "../units";
import { meanCharge, millimolesPerMillilitre, protonsAt, type AcidSolution } from "./acids";
import { acidSurplus, settle, type ProtonBalance } from "./proton-balance";

export type AcidToReach =
  | { readonly ok: true; readonly ml: Millilitres }
  /** It is at `ph` without any; `baseNeeded` would raise it to the target. */
  | {
      readonly ok: false;
      readonly reason: "already-below";
      readonly ph: Ph;
      readonly baseNeeded: Milliequivalents;
    }
  /** `ph` is reached with `ml`, the most that may be added; `acidMissing` would take it on to the target. */
  | {
      readonly ok: false;
      readonly reason: "too-much-acid";
      readonly ml: Millilitres;
      readonly ph: Ph;
      readonly acidMissing: Milliequivalents;
    };

/**
 * Finds the acid that brings a balance to a pH: what is missing there, by what a millilitre gives off there.
 *
 * @param balance - The mash or the water, with the acids that are already in it.
 * @param wanted - The acid, the target and the most that may be added.
 * @param span - Where the pH may settle.
 * @returns Acid, mL, or why it cannot be done and what is reached.
 * @throws {@link OutOfRangeError} when the target is outside the span, or the acid or the most outside its range.
 * @example
 * acidToReach(balance, { acid: ACID_SOLUTIONS.lactic88, targetPh: ph(5.4), mostMl: millilitres(20) }, MASH_PH_SPAN);
 */
export function acidToReach(
  balance: ProtonBalance,
  wanted: { readonly acid: AcidSolution; readonly targetPh: Ph; readonly mostMl: Millilitres },
  span: { readonly unit: string; readonly min: number; readonly max: number },
): AcidToReach {
  const target = requireInRange("target pH", wanted.targetPh, span);
  const mostMl = requireInRange("most acid", wanted.mostMl, millilitres.range);
  const mmolPerMl = millimolesPerMillilitre(wanted.acid);
  const kind = wanted.acid.acid;
  const surplusMeq = acidSurplus(balance, target);
  if (surplusMeq > 0) {
    return {
      ok: false,
      reason: "already-below",
      ph: ph(settle(balance, span).ph),
      baseNeeded: milliequivalents(surplusMeq),
    };
  }
  const meqPerMl = mmolPerMl * meanCharge(kind, protonsAt(target));
  const needed = -surplusMeq / meqPerMl;
  if (needed <= mostMl) return { ok: true, ml: millilitres(needed) };
  const acids = [...balance.acids, { acid: kind, mmol: mostMl * mmolPerMl }];
  return {
    ok: false,
    reason: "too-much-acid",
    ml: mostMl,
    ph: ph(settle({ ...balance, acids }, span).ph),
    acidMissing: milliequivalents((needed - mostMl) * meqPerMl),
  };
}
