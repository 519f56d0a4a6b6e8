import { OutOfRangeError, requireInRange } from "../errors";
import { quasiRandom } from "../numerics";
import { cholesky } from "../numerics/cholesky";
import { normalQuantile } from "../statistics";
import { brew, brewWithWater } from "./brew";
import type { Ambient, Equipment } from "./equipment";
import type { FigureCorrelation } from "./figure-correlation";
import { CORRELATION_RANGE, isPredicted, waterOf, type Intervals } from "./interval";
import { mashedMalt } from "./mashed-malt";
import { pouredWater } from "./poured-water";
import { QUANTITY_IDS, type QuantityId } from "./quantity-catalogue";
import type { Recipe } from "./recipe";
import { uncertainInputs, type Moved, type UncertainInput } from "./uncertain-inputs";

export const DRAWS_RANGE = { unit: "draws", min: 100, max: 10_000 } as const;

/** What lies below the low and above the high end. */
const TAIL = 0.1;

/**
 * Gives 80 % intervals by brewing many times on figures drawn from their uncertainties.
 *
 * The slow and thorough way, with curvature and bounds and all: `intervals` is a hundred times as fast and is held
 * against it. Draws are quasi-random, so that a few hundred are as even as many thousands of dice.
 *
 * @param a.recipe - Amounts for this kettle.
 * @param a.equipment - The kettle, with the uncertainty of each figure.
 * @param a.ambient - Air, tap water and grain on the day.
 * @param a.correlations - Pairs of figures whose errors go together; left out, those that stand in the equipment.
 * @param a.draws - How many brews.
 * @param a.seed - Whole number; the same seed gives the same draws.
 * @returns The 10th and 90th percentile of each predicted quantity; empty when nothing can be brewed or the
 * coefficients contradict each other.
 * @validRange 100 to 10 000 draws.
 * @throws {@link OutOfRangeError} when an input, the draws or a coefficient is outside its range.
 * @source JCGM 101:2008, propagation of distributions by sampling (docs/sources.md#jcgm-101-2008)
 * @example
 * sampledIntervals({ recipe, equipment, ambient, draws: 500, seed: 1 })["fermenter.originalExtract"]; // { low80: 11.6, … }
 */
export function sampledIntervals(a: {
  readonly recipe: Recipe;
  readonly equipment: Equipment;
  readonly ambient: Ambient;
  readonly correlations?: readonly FigureCorrelation[];
  readonly draws: number;
  readonly seed: number;
}): Intervals {
  requireInRange("draws", a.draws, DRAWS_RANGE);
  if (!Number.isInteger(a.draws)) throw new OutOfRangeError("draws", a.draws, DRAWS_RANGE);
  const centre = brew(a);
  if (!centre.ok) return {};
  const water = waterOf(centre.ledger);
  const inputs = uncertainInputs({ ...a, shiftSd: mashedMalt(centre.ledger.phases)?.shiftSd ?? 0 });
  const mix = factorOf(inputs, a.correlations ?? a.equipment.correlations ?? []);
  if (mix === null) return {};
  const values = new Map<QuantityId, number[]>(QUANTITY_IDS.map((id) => [id, []]));
  const waters = pouredWater(water);
  for (const point of quasiRandom({ dimension: inputs.length + waters.length, count: a.draws, seed: a.seed })) {
    const independent = point.map((share) => normalQuantile(share));
    const drawn = inputs.reduce<Moved>((brewed, input, i) => input.move(brewed, dot(mix[i] ?? [], independent)), {
      recipe: a.recipe,
      equipment: a.equipment,
    });
    const poured = waters.reduce((all, { move }, i) => move(all, independent[inputs.length + i] ?? 0), water);
    const outcome = brewWithWater({ ...a, ...poured, ...drawn });
    if (!outcome.ok) continue;
    for (const [id, list] of values) {
      const value = outcome.ledger.quantities[id];
      if (value !== null) list.push(value);
    }
  }
  return intervalsOf(values);
}

const dot = (one: readonly number[], other: readonly number[]): number =>
  one.reduce((sum, value, i) => sum + value * (other[i] ?? 0), 0);

function intervalsOf(values: ReadonlyMap<QuantityId, number[]>): Intervals {
  const found: Partial<Record<QuantityId, Intervals[QuantityId]>> = {};
  for (const [id, list] of values) {
    if (!isPredicted(id) || list.length === 0) continue;
    list.sort((one, other) => one - other);
    const low80 = percentile(list, TAIL);
    const high80 = percentile(list, 1 - TAIL);
    if (high80 - low80 > 1e-9 * Math.abs(high80)) found[id] = { low80, high80 };
  }
  return found as Intervals;
}

/** Between the two values beside it, in proportion. */
function percentile(sorted: readonly number[], share: number): number {
  const at = share * (sorted.length - 1);
  const low = sorted[Math.floor(at)] ?? 0;
  const high = sorted[Math.ceil(at)] ?? low;
  return low + (at - Math.floor(at)) * (high - low);
}

/** How far below zero rounding may take a correlation matrix whose errors all follow from each other. */
const LEAST_SHARE = -1e-12;

/** Rows that turn independent draws into correlated ones; null where no set of errors could be correlated like this. */
function factorOf(
  inputs: readonly UncertainInput[],
  correlations: readonly FigureCorrelation[],
): readonly (readonly number[])[] | null {
  const size = inputs.length;
  const matrix = new Float64Array(size * size);
  for (let i = 0; i < size; i++) matrix[i * size + i] = 1;
  const placeOf = (name: string): number => inputs.findIndex((input) => input.name === name);
  for (const { one, other, coefficient } of correlations) {
    requireInRange("correlation coefficient", coefficient, CORRELATION_RANGE);
    const [i, j] = [placeOf(one), placeOf(other)];
    if (i < 0 || j < 0) continue;
    matrix[i * size + j] = coefficient;
    matrix[j * size + i] = coefficient;
  }
  const { lower, leastShare } = cholesky(matrix, size);
  if (leastShare < LEAST_SHARE) return null;
  return inputs.map((_, i) => [...lower.subarray(i * size, (i + 1) * size)]);
}
