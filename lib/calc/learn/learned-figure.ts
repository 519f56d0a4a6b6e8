import type { Equipment, Figure, FigureName } from "../ledger";
import { normalCdf } from "../statistics";
import { brewScatter } from "./brew-scatter";
import type { KettlePrior } from "./kettle-prior";
import type { Posterior } from "./posterior";
import { product } from "./product";
import type { WeighedBrew } from "./weighed-brew";

/** How a figure changes with the brews. */
export interface FigureTrend {
  /** Change from one brew to the next, in the unit of the figure. */
  readonly perBrew: number;
  readonly standardError: number;
  /** How probable a change as large is when the figure stays the same. */
  readonly p: number;
}

export interface LearnedFigure {
  readonly name: FigureName;
  /** The kettle's own figure. */
  readonly value: number;
  /** How well that is known, in the unit of the figure. */
  readonly standardError: number;
  /** How far one brew is off from it, standard deviation. */
  readonly scatter: number;
  /** How many brews tell something of it. */
  readonly brews: number;
  /** null with fewer than three brews that tell of it. */
  readonly trend: FigureTrend | null;
  /** As it stands in a profile: its uncertainty is that of the next brew, error and scatter together. */
  readonly figure: Figure<number>;
}

const LEAST_BREWS_OF_TREND = 3;

interface Learned {
  readonly equipment: Equipment;
  readonly prior: KettlePrior;
  readonly brews: readonly WeighedBrew[];
  readonly weights: readonly number[];
  /** Of which figures each brew tells. */
  readonly telling: readonly (readonly boolean[])[];
  readonly found: Posterior;
  readonly bounded: Posterior;
}

/**
 * Reads one figure out of what was found.
 *
 * @param k - Its place in the prior.
 * @returns The figure with error, count and trend; as it was where no brew tells of it.
 */
export function learnedFigure(a: Learned, k: number): LearnedFigure {
  const { prior, bounded } = a;
  const place = prior.places[k];
  if (place === undefined) throw new Error("the prior has no such figure");
  const { name } = place;
  const before = place.of(a.equipment);
  const count = a.telling.filter((tells) => tells[k] === true).length;
  const unit = prior.unit[k] ?? 1;
  if (count === 0) {
    const scatter = brewScatter(name, before.value);
    return { name, value: before.value, standardError: unit, scatter, brews: 0, trend: null, figure: before };
  }
  const { min, max } = place.range;
  const free = (prior.centre[k] ?? 0) + unit * (bounded.mean[k] ?? 0);
  const value = Math.min(max, Math.max(min, free));
  const standardError = unit * Math.sqrt(bounded.covariance[k * prior.places.length + k] ?? 0);
  const scatter = brewScatter(name, value);
  const figure = {
    value,
    sd: Math.hypot(standardError, scatter),
    from: "learned",
    count: before.count + count,
  } as const;
  return { name, value, standardError, scatter, brews: count, trend: trendOf(a, k, count), figure };
}

/**
 * With a slope δ beside the figures, θ + δ·t, and t counted from the middle brew, the slope that remains when the figures are
 * eliminated.
 */
function trendOf({ prior, brews, weights, found }: Learned, k: number, count: number): FigureTrend | null {
  if (count < LEAST_BREWS_OF_TREND) return null;
  const size = prior.places.length;
  const tied = new Float64Array(size);
  let pull = 0;
  let information = 0;
  brews.forEach((brew, b) => {
    const weight = weights[b] ?? 1;
    const t = b - (brews.length - 1) / 2;
    pull += weight * t * (brew.pull[k] ?? 0);
    information += weight * t * t * (brew.precision[k * size + k] ?? 0);
    for (let j = 0; j < size; j++) tied[j] = (tied[j] ?? 0) + weight * t * (brew.precision[k * size + j] ?? 0);
  });
  tied.forEach((value, j) => {
    pull -= value * (found.mean[j] ?? 0);
    information -= value * product(found.covariance, j, tied);
  });
  if (!(information > 0)) return null;
  const unit = prior.unit[k] ?? 1;
  const z = Math.abs(pull) / Math.sqrt(information);
  return {
    perBrew: (unit * pull) / information,
    standardError: unit / Math.sqrt(information),
    p: 2 * normalCdf(-Math.min(z, 30)),
  };
}
