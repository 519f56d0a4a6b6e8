import type { VariableId } from "./balance-variables";
import { DOUBT } from "./find-suspects";
import type { SettledReadings } from "./settle-readings";

/** The global test: whether readings and plan can all be right together. */
export interface BalanceTest {
  readonly chiSquared: number;
  readonly df: number;
  /** How probable so large a disagreement is, or a larger one, by chance alone. */
  readonly p: number;
  readonly verdict: "untested" | "close" | "reading doubted" | "kettle otherwise" | "open";
  /** Figures of the plan that the readings contradict. */
  readonly departures: readonly VariableId[];
  /** The test of what is left without the doubted readings and figures; null where nothing was taken out. */
  readonly afterwards: { readonly chiSquared: number; readonly df: number; readonly p: number } | null;
  readonly words: string;
}

/** What a figure of the plan is called where the kettle did otherwise. */
export const FIGURE_WORDS: Readonly<Partial<Record<VariableId, string>>> = {
  spargeL: "the sparge water that ran in",
  dissolvedKg: "what dissolved in the mash",
  lauterLostKg: "the extract that stayed in the grain",
  retainedKg: "the wort that stayed in the grain",
  evaporatedKg: "what boiled off",
  leftKg: "what stayed with trub, hops and hoses",
  beerLeftL: "the beer that stayed with the yeast",
};

/**
 * Says whether the readings of a brew can all be right together.
 *
 * @returns χ² of all adjustments with its degrees of freedom and probability, and what it means.
 * @source Narasimhan and Jordache 2000, chapter 7, global test (docs/sources.md#narasimhan-jordache-2000)
 */
export function balanceTest({ found }: SettledReadings): BalanceTest {
  const { all, reconciled, departures, suspects } = found;
  const { chiSquared, df, p } = all;
  const isDoubted = suspects.some(({ test }) => test === "balance");
  const verdict =
    df === 0
      ? "untested"
      : p >= DOUBT
        ? "close"
        : isDoubted
          ? "reading doubted"
          : departures.length > 0
            ? "kettle otherwise"
            : "open";
  const tookOut = isDoubted || departures.length > 0;
  return {
    chiSquared,
    df,
    p,
    verdict,
    departures,
    afterwards: tookOut ? { chiSquared: reconciled.chiSquared, df: reconciled.df, p: reconciled.p } : null,
    words: wordsFor(verdict, p, departures),
  };
}

function wordsFor(verdict: BalanceTest["verdict"], p: number, departures: readonly VariableId[]): string {
  const chance = inAHundred(p);
  const otherwise = departures.flatMap((id) => FIGURE_WORDS[id] ?? []).join(", and ");
  switch (verdict) {
    case "untested":
      return "No reading can be checked by another yet.";
    case "close":
      return `The readings agree with each other and with the kettle’s figures: chance alone would set them as far apart in ${chance} such brews.`;
    case "reading doubted":
      return `The readings cannot all be right: chance alone would set them so far apart in ${chance} such brews. The one that explains it is named; the values below are reckoned without it.${
        otherwise === "" ? "" : ` Besides, the kettle did otherwise than its figures say in ${otherwise}.`
      }`;
    case "kettle otherwise":
      return `The readings agree with each other, and not with the kettle’s figures: it did otherwise than planned in ${otherwise}. By chance alone that would happen in ${chance} such brews.`;
    case "open":
      return `The readings cannot all be right: chance alone would set them so far apart in ${chance} such brews. No single one explains it.`;
  }
}

function inAHundred(p: number): string {
  if (p >= 0.995) return "nearly all";
  if (p >= 0.015) return `${String(Math.round(100 * p))} of 100`;
  if (p >= 0.0015) return `${String(Math.round(1000 * p))} of 1000`;
  return "fewer than 2 of 1000";
}
