import { requireInRange } from "../errors";
import { billionCells, type BillionCells, type Grams } from "../units";
import type { CountedCells } from "./cells-in-pack";

/** How a starter gets its air: left alone and shaken now and then, or on a stirrer. */
export type StarterMethod = "still" | "stirred";

export const STARTER_RANGE = { unit: "g", min: 1, max: 1_000_000 } as const;

/** More cells than this on a gram of extract divide less than the rates of practice say, 10⁹. */
const CROWDED = 1.4;

/** New cells on a gram of extract, 10⁹. */
const GROWTH = {
  still: { expected: 0.5, low: 0.4, high: 0.6 },
  stirred: { expected: 1.4, low: 1.05, high: 1.75 },
} as const satisfies Readonly<Record<StarterMethod, Readonly<Record<"expected" | "low" | "high", number>>>>;

export type StarterGrowth =
  | { readonly ok: true; readonly grown: CountedCells; readonly total: CountedCells }
  | { readonly ok: false; readonly reason: "crowded"; readonly extractNeededG: number };

/**
 * Estimates the yeast that a starter grows from the extract in its wort.
 *
 * Sugar, air and room limit the growth, so it goes by the gram of extract: 0.5 thousand million new cells when left
 * standing, 1.4 when stirred.
 *
 * @param a.cells - Living cells put in, 10⁹.
 * @param a.extractG - Extract in the starter, g.
 * @param a.method - Left still or stirred.
 * @returns New cells and all cells, 10⁹, with the limits of practice; or that more than 1.4·10⁹ cells stand on each gram,
 * and the extract at which they do not.
 * @validRange 1 g to 1000 kg of extract.
 * @throws {@link OutOfRangeError} when cells or extract are outside their range.
 * @source Common practice (docs/sources.md#trade-practice)
 * @example
 * starterGrowth({ cells: billionCells(80), extractG: grams(100), method: "stirred" });
 * // { ok: true, grown: { expected: 140, low: 105, high: 175 }, total: { expected: 220, low: 185, high: 255 } }
 */
export function starterGrowth({
  cells,
  extractG,
  method,
}: {
  readonly cells: BillionCells;
  readonly extractG: Grams;
  readonly method: StarterMethod;
}): StarterGrowth {
  requireInRange("cells", cells, billionCells.range);
  requireInRange("extract", extractG, STARTER_RANGE);
  const extractNeededG = cells / CROWDED;
  if (extractG < extractNeededG) return { ok: false, reason: "crowded", extractNeededG };
  const { expected, low, high } = GROWTH[method];
  const counted = (start: number): CountedCells => ({
    expected: billionCells(start + expected * extractG),
    low: billionCells(start + low * extractG),
    high: billionCells(start + high * extractG),
  });
  return { ok: true, grown: counted(0), total: counted(cells) };
}
