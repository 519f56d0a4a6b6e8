import { OutOfRangeError, requireInRange } from "../errors";
import { NORMAL_DEVIATE_RANGE, normalCdf } from "../statistics";

export const STYLE_FIGURE_RANGE = { unit: "", min: -1000, max: 10_000 } as const;
export const STYLE_FIGURE_SD_RANGE = { unit: "", min: 0, max: 10_000 } as const;

/** One figure of a beer beside the range that a style gives for it, all in one unit. */
export interface StyleFigure {
  readonly value: number;
  /** Standard uncertainty of the value; null where nothing is known of it. */
  readonly sd: number | null;
  readonly low: number;
  readonly high: number;
}

export interface FigurePlace {
  /** How far above the range, negative for below, 0 inside. */
  readonly outsideBy: number;
  /** The same in half-widths of the range, or in standard uncertainties where those are wider. */
  readonly deviation: number;
  /** Probability that the true value is inside; null where the uncertainty is not known. */
  readonly chanceInside: number | null;
}

export interface StyleDistance {
  /** Root mean square of the deviations; 0 when every figure is inside. */
  readonly distance: number;
  /** Root mean square of the distances from the middle of the ranges, in the same units: tells styles apart that all fit. */
  readonly offCentre: number;
  readonly figures: readonly FigurePlace[];
}

/**
 * Measures how far a beer is from the published ranges of a style.
 *
 * Each figure counts by how far outside it lies, in half-widths of the range, so that a gravity and a colour weigh alike; a
 * figure that is known worse than the range is wide counts in its own uncertainty instead. It says nothing of taste.
 *
 * @param figures - The figures that are known of the beer, each with the range of the style; at least one.
 * @returns Distance, distance from the middle, and for each figure how far outside and the chance of being inside.
 * @validRange Values −1000 to 10 000 in any unit, `low` below `high`.
 * @throws {@link OutOfRangeError} when a number is out of range, a range is empty, or no figure is given.
 * @source Root mean square of scaled distances, docs/worked-examples.md#style-distance; normal tail, docs/sources.md#abramowitz-stegun-1964
 * @example
 * styleDistance([{ value: 1.052, sd: null, low: 1.04, high: 1.048 }]).distance; // 1: one half-width above
 */
export function styleDistance(figures: readonly StyleFigure[]): StyleDistance {
  requireInRange("number of figures", figures.length, { unit: "", min: 1, max: 100 });
  const placed = figures.map(placeOf);
  return {
    distance: rootMeanSquare(placed.map(({ place }) => place.deviation)),
    offCentre: rootMeanSquare(placed.map(({ fromMiddle }) => fromMiddle)),
    figures: placed.map(({ place }) => place),
  };
}

function placeOf({ value, sd, low, high }: StyleFigure): { readonly place: FigurePlace; readonly fromMiddle: number } {
  requireInRange("figure", value, STYLE_FIGURE_RANGE);
  requireInRange("lowest of the style", low, STYLE_FIGURE_RANGE);
  requireInRange("highest of the style", high, STYLE_FIGURE_RANGE);
  if (sd !== null) requireInRange("uncertainty of the figure", sd, STYLE_FIGURE_SD_RANGE);
  if (low >= high) throw new OutOfRangeError("highest of the style", high, { ...STYLE_FIGURE_RANGE, min: low });
  const unit = Math.max((high - low) / 2, sd ?? 0);
  const outsideBy = value > high ? value - high : Math.min(0, value - low);
  return {
    place: { outsideBy, deviation: outsideBy / unit, chanceInside: sd === null ? null : chance(value, sd, low, high) },
    fromMiddle: (value - (low + high) / 2) / unit,
  };
}

function chance(value: number, sd: number, low: number, high: number): number {
  if (sd === 0) return value >= low && value <= high ? 1 : 0;
  const below = (limit: number): number => {
    const { min, max } = NORMAL_DEVIATE_RANGE;
    return normalCdf(Math.min(max, Math.max(min, (limit - value) / sd)));
  };
  return below(high) - below(low);
}

const rootMeanSquare = (values: readonly number[]): number =>
  Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / values.length);
