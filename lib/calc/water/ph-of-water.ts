import { ph as phOf, type Ph } from "../units";
import type { AcidAddition } from "./ions-from-acids";
import type { Liquor } from "./liquor";
import { protonBalance, settle } from "./proton-balance";

export type PhOfWater =
  | { readonly ok: true; readonly ph: Ph }
  | { readonly ok: false; readonly reason: "too-acid" | "too-alkaline"; readonly ph: Ph };

export const WATER_PH_SPAN = { unit: "pH", min: 2, max: 12.6 } as const;

const NO_REACTION = { calcium: 0, magnesium: 0 } as const;

/**
 * Finds the pH of a water with its salts and acids, without any malt.
 *
 * Nothing settles out: above pH 8 or so lime and chalk do, with time and warmth, and the water then reads lower.
 *
 * @returns pH at 25 °C.
 * @validRange Waters that end between pH 2 and 12.6, about saturated limewater.
 * @throws {@link OutOfRangeError} when a figure of the water or the acids is outside its range.
 * @source Plummer and Busenberg 1982 (docs/sources.md#plummer-busenberg-1982)
 * @example
 * phOfWater({ water: tapWater, acids: [] }); // { ok: true, ph: 7.5 }, as analysed
 */
export function phOfWater({
  water,
  acids,
}: {
  readonly water: Liquor;
  readonly acids: readonly AcidAddition[];
}): PhOfWater {
  const settled = settle(protonBalance({ water, grist: [], hardnessReaction: NO_REACTION, acids }), WATER_PH_SPAN);
  const ph = phOf(settled.ph);
  return settled.ok ? { ok: true, ph } : { ok: false, reason: settled.reason, ph };
}
