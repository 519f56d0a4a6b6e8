import { milliequivalents, ph as phOf, type Milliequivalents, type Ph } from "../units";
import { meanCharge, protonsAt } from "./acids";
import type { AcidAddition } from "./ions-from-acids";
import { alkalinityAt, type Liquor } from "./liquor";
import type { MashedMalt } from "./mashed-malt";
import { maltAcid, protonBalance, settle, type HardnessReaction, type ProtonBalance } from "./proton-balance";

/** All that decides the pH of a mash. */
export interface Mash {
  readonly water: Liquor;
  readonly grist: readonly MashedMalt[];
  /** `KOLBACH_REACTION`, or figures for the malt at hand; zeros leave the reaction out. */
  readonly hardnessReaction: HardnessReaction;
  readonly acids: readonly AcidAddition[];
}

/** Where the pH comes from: acid given off at it, mEq. All terms together are zero; below zero is acid taken up. */
export interface ProtonTerms {
  /** In the order of the grist. */
  readonly malts: readonly Milliequivalents[];
  /** In the order of the acids. */
  readonly acids: readonly Milliequivalents[];
  readonly calcium: Milliequivalents;
  readonly magnesium: Milliequivalents;
  /** The alkalinity that is used up. */
  readonly alkalinity: Milliequivalents;
}

export type MashPh =
  | { readonly ok: true; readonly ph: Ph; readonly terms: ProtonTerms }
  | { readonly ok: false; readonly reason: "no-grist" }
  /** The balance lies beyond `ph`, where no malt has been titrated. */
  | { readonly ok: false; readonly reason: "too-acid" | "too-alkaline"; readonly ph: Ph };

export const MASH_PH_SPAN = { unit: "pH", min: 3, max: 10 } as const;

/**
 * Finds the pH of a mash, read at room temperature, from a balance of protons.
 *
 * Each malt buffers around its own distilled-water pH, acid uses up the alkalinity of the water, calcium and magnesium
 * set protons free from malt phosphates, and added acids give off what the resulting pH lets them. Kolbach's figures for
 * calcium and magnesium hold for knocked-out wort; in mashes Barth and Zaman found others for each malt
 * (docs/sources.md#barth-zaman-2015).
 *
 * @returns pH at 20 to 25 °C with the terms of its balance; usually within 0.1 where malts are measured, 0.2 where guessed.
 * @validRange Mashes that settle between pH 3 and 10, with some grist.
 * @throws {@link OutOfRangeError} when a figure of the water, the malts or the acids is outside its range.
 * @source Balance of protons after deLange 2015, MBAA Tech. Quart. 52 (docs/sources.md#delange-2015)
 * @example
 * mashPh({ water: tapWater, grist: [pilsner5kg], hardnessReaction: KOLBACH_REACTION, acids: [] }); // { ok: true, ph: 5.78, … }
 */
export function mashPh(mash: Mash): MashPh {
  const balance = protonBalance(mash);
  if (!hasGrist(balance)) return { ok: false, reason: "no-grist" };
  const settled = settle(balance, MASH_PH_SPAN);
  const ph = phOf(settled.ph);
  if (!settled.ok) return { ok: false, reason: settled.reason, ph };
  return { ok: true, ph, terms: termsAt(balance, ph) };
}

/**
 * Says whether there is malt in a balance.
 *
 * @param balance - The mash.
 * @returns True with any malt above zero.
 * @example
 * hasGrist(protonBalance({ water, grist: [], hardnessReaction, acids: [] })); // false
 */
export function hasGrist(balance: ProtonBalance): boolean {
  return balance.malts.some((malt) => malt.kg > 0);
}

function termsAt(balance: ProtonBalance, ph: number): ProtonTerms {
  const protons = protonsAt(ph);
  return {
    malts: balance.malts.map((_, row) => milliequivalents(maltAcid(balance, row, ph, protons))),
    acids: balance.acids.map(({ acid, mmol }) => milliequivalents(mmol * meanCharge(acid, protons))),
    calcium: milliequivalents(balance.calciumMeq),
    magnesium: milliequivalents(balance.magnesiumMeq),
    alkalinity: milliequivalents(alkalinityAt(balance.liquor, protons) - balance.liquor.alkalinityMeq),
  };
}
