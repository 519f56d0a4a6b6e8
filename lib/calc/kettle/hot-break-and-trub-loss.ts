import { requireInRange } from "../errors";
import { litres, squareMetres, type Litres, type SquareMetres } from "../units";

/** Wet hot break that a litre of wort lets fall, L/L: about 0.6 g dry at a fifth solids. Common practice, no source. */
const BREAK_L_PER_L = 0.003;

/** Depth of wort that cannot be drawn without trub, mm. Common practice, no source. */
const STRANDED_MM = {
  /** The trub lies as a cone in the middle, the outlet draws beside it. */
  cone: 5,
  /** The trub lies all over the bottom. */
  spread: 15,
  /** The space under a false bottom, which also keeps a whirlpool from piling up a cone. */
  underScreen: 12,
} as const;

export interface TrubLoss {
  /** All that stays behind. */
  readonly litres: Litres;
  /** Hot break with the wort in it. */
  readonly breakLitres: Litres;
  /** Clear wort that cannot be drawn without it. */
  readonly strandedLitres: Litres;
}

/**
 * Estimates the wort that stays in the kettle with the hot break.
 *
 * The break itself keeps little; what counts is the layer of wort that cannot be drawn without stirring it up, and that
 * goes with the bottom of the kettle. A whirlpool on a plain bottom piles the trub into a cone and leaves a thin layer; a
 * false bottom breaks the whirlpool and keeps the wort below it. Hops come on top by `hopAbsorption`, and a loss learned
 * from one's own kettle replaces this. Hot wort whirls over the rim easily: stir below it.
 *
 * @param a.wort - Wort at the end of the boil, L at 20 °C.
 * @param a.bottomM2 - Bottom of the kettle, m².
 * @param a.whirlpool - Whether the wort is whirled and left to settle.
 * @param a.falseBottom - Whether a false bottom or screen lies in the kettle.
 * @returns Wort lost, L at 20 °C, and its parts; never more than there is. Good to half or double.
 * @validRange Wort up to 100 000 L, bottom up to 100 m².
 * @throws {@link OutOfRangeError} when an argument is outside its range.
 * @source Common practice, no source (docs/sources.md#trade-practice)
 * @example
 * hotBreakAndTrubLoss({ wort: litres(23), bottomM2: squareMetres(0.09), whirlpool: true, falseBottom: false }); // 0.52 L
 */
export function hotBreakAndTrubLoss(a: {
  readonly wort: Litres;
  readonly bottomM2: SquareMetres;
  readonly whirlpool: boolean;
  readonly falseBottom: boolean;
}): TrubLoss {
  requireInRange("wort", a.wort, litres.range);
  requireInRange("bottom of the kettle", a.bottomM2, squareMetres.range);
  const breakL = BREAK_L_PER_L * a.wort;
  const strandedL = Math.min(a.wort - breakL, a.bottomM2 * strandedMm(a));
  return { litres: litres(breakL + strandedL), breakLitres: litres(breakL), strandedLitres: litres(strandedL) };
}

// A millimetre on a square metre is a litre.
function strandedMm(a: { readonly whirlpool: boolean; readonly falseBottom: boolean }): number {
  if (a.falseBottom) return STRANDED_MM.spread + STRANDED_MM.underScreen;
  return a.whirlpool ? STRANDED_MM.cone : STRANDED_MM.spread;
}
