import { OutOfRangeError, requireInRange } from "../errors";
import { solveLinear } from "../numerics";
import { type FactorProducts, factorProducts } from "./factor-products";
import { confounded } from "./confounded";
import { LEAST_REST, likeliestVariances, type Likeliest } from "./likeliest-variances";
import { SAMPLE_VALUE_RANGE, sampleOf } from "./sample";
import { varianceLimits } from "./variance-limits";

/** One result, who brewed it, on what, and to which revision of the recipe. */
export interface PartitionObservation {
  readonly value: number;
  readonly brewer: string;
  readonly equipment: string;
  readonly revision: string;
}

export interface VarianceComponent {
  readonly variance: number;
  /** Of the sum of all components. */
  readonly share: number;
  /** Standard error of the variance, from the expected curvature of the likelihood. */
  readonly standardError: number;
  /** Span of the variance that the likelihood does not contradict with 80 %; null above where it has no end. */
  readonly low80: number;
  readonly high80: number | null;
  /** How many brewers, kettles or revisions there are. */
  readonly levels: number;
}

export type PartitionFactor = "brewer" | "equipment" | "revision";

export type VariancePartition =
  | {
      readonly ok: true;
      readonly mean: number;
      readonly meanError: number;
      /** Null where all observations share one brewer, kettle or revision: nothing can be told of it. */
      readonly brewer: VarianceComponent | null;
      readonly equipment: VarianceComponent | null;
      readonly revision: VarianceComponent | null;
      /** What neither explains. */
      readonly residual: Omit<VarianceComponent, "levels">;
    }
  | {
      readonly ok: false;
      /**
       * All values are the same; all share every factor; factors always change together, so that no data of this kind can tell
       * them apart; or the factors explain the values without a rest.
       */
      readonly reason: "no-scatter" | "nothing-to-compare" | "confounded" | "no-residual";
      /** Which cannot be told apart. */
      readonly together: readonly (PartitionFactor | "residual")[];
    };

export const PARTITION_RANGE = {
  observations: { unit: "", min: 3, max: 2000 },
  levels: { unit: "", min: 1, max: 200 },
} as const;

const FACTORS = ["brewer", "equipment", "revision"] as const;

/**
 * Splits the variance of brews of one recipe into shares of brewer, equipment, revision and the rest.
 *
 * Random effects without interaction, by restricted maximum likelihood; a share may be 0. With a handful of brewers the shares
 * are rough, which the intervals show.
 *
 * @param a.observations - Results with brewer, equipment and revision of each; crossed, nested or with gaps.
 * @returns Variances in the squared unit of the values, to about six digits, limits to four; or what the data cannot tell apart.
 * @validRange 3 to 2000 observations and up to 200 brewers, kettles and revisions together.
 * @throws {@link OutOfRangeError} when there are too few or too many, or a value is not a number.
 * @source Searle, Casella and McCulloch 1992, chapters 6 and 8 (docs/sources.md#searle-1992)
 * @example
 * variancePartition({ observations: [{ value: 12.1, brewer: "a", equipment: "x", revision: "1" }, …] });
 */
export function variancePartition({
  observations,
}: {
  readonly observations: readonly PartitionObservation[];
}): VariancePartition {
  requireInRange("number of observations", observations.length, PARTITION_RANGE.observations);
  for (const { value } of observations) requireInRange("value", value, SAMPLE_VALUE_RANGE);
  const names = FACTORS.map((factor) => observations.map((observation) => observation[factor]));
  const counts = names.map((list) => new Set(list).size);
  requireLevels(counts);

  const { n, mean, squares, origin, shift } = sampleOf(observations.map(({ value }) => value));
  const scale = Math.sqrt(squares / (n - 1));
  const present = FACTORS.filter((_, f) => (counts[f] ?? 0) > 1);
  if (scale === 0) return { ok: false, reason: "no-scatter", together: [] };
  if (present.length === 0) return { ok: false, reason: "nothing-to-compare", together: [] };
  const data = factorProducts(
    observations.map(({ value }) => (value - origin - shift) / scale),
    names.filter((_, f) => (counts[f] ?? 0) > 1),
  );
  const together = confounded(data).map((place) => present[place] ?? ("residual" as const));
  if (together.length > 0) return { ok: false, reason: "confounded", together };

  const start = [...present, "residual"].map(() => 1 / (present.length + 1));
  const best = likeliestVariances(data, start, null);
  if ((best.variances.at(-1) ?? 0) <= 2 * LEAST_REST) return { ok: false, reason: "no-residual", together: [] };
  const component = (place: number): Omit<VarianceComponent, "levels"> => componentOf(data, best, place, scale);
  const ofFactor = (factor: PartitionFactor): VarianceComponent | null => {
    const place = present.indexOf(factor);
    return place < 0 ? null : { ...component(place), levels: data.levels[place] ?? 0 };
  };
  return {
    ok: true,
    mean: mean + scale * best.mean,
    meanError: scale * Math.sqrt(best.meanVariance),
    brewer: ofFactor("brewer"),
    equipment: ofFactor("equipment"),
    revision: ofFactor("revision"),
    residual: component(present.length),
  };
}

function componentOf(
  data: FactorProducts,
  best: Likeliest,
  place: number,
  scale: number,
): Omit<VarianceComponent, "levels"> {
  const square = scale ** 2;
  const { variances } = best;
  const variance = variances[place] ?? 0;
  const standardError = errorOf(best.information, place);
  const { low, high } = varianceLimits(data, best, place, standardError);
  return {
    variance: square * variance,
    share: variance / variances.reduce((sum, value) => sum + value, 0),
    standardError: square * standardError,
    low80: square * low,
    high80: high === null ? null : square * high,
  };
}

// Root of the diagonal of the inverse of the expected curvature.
function errorOf(information: readonly (readonly number[])[], place: number): number {
  const solution = solveLinear({ matrix: information, rhs: information.map((_, i) => (i === place ? 1 : 0)) });
  return solution.ok ? Math.sqrt(Math.max(0, solution.x[place] ?? 0)) : 0;
}

function requireLevels(counts: readonly number[]): void {
  const total = counts.reduce((sum, count) => sum + count, 0);
  const { max } = PARTITION_RANGE.levels;
  if (total > max) throw new OutOfRangeError("number of brewers, kettles and revisions", total, PARTITION_RANGE.levels);
}
