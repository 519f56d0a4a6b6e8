import { FIGURES, type Equipment, type FigureCorrelation, type FigurePlace } from "../ledger";
import { cholesky, inverse } from "../numerics/cholesky";
import { brewScatter } from "./brew-scatter";

/** What was known of a kettle before its brews. All else is counted from `centre` in units of `unit`. */
export interface KettlePrior {
  readonly places: readonly FigurePlace[];
  readonly centre: readonly number[];
  /** Standard uncertainty of the kettle's own figure, without the scatter of its brews. */
  readonly unit: readonly number[];
  /** Scatter from brew to brew, in the same units. */
  readonly scatter: readonly number[];
  /** Inverse of the covariance, row after row; the unit matrix where nothing is correlated. */
  readonly precision: Float64Array;
  /** Variance of each, 1 in its own unit. */
  readonly variance: readonly number[];
}

/** Of a learned variance, what the scatter of brews may leave. */
const LEAST_SHARE = 0.01;

/**
 * Reads from a profile what is known of its figures, and how far brews scatter about them.
 *
 * A figure that was learned is stated as the next brew will find it, so the scatter comes off its uncertainty again.
 *
 * @param correlations - Pairs of figures whose errors go together.
 * @returns The figures that have an uncertainty.
 */
export function kettlePrior(equipment: Equipment, correlations: readonly FigureCorrelation[]): KettlePrior {
  const places = FIGURES.filter(({ of }) => of(equipment).sd > 0);
  const figures = places.map(({ of }) => of(equipment));
  const scatter = places.map(({ name }, i) => brewScatter(name, figures[i]?.value ?? 0));
  const unit = figures.map(({ sd, from }, i) => {
    if (from !== "learned") return sd;
    return Math.sqrt(Math.max(LEAST_SHARE * sd ** 2, sd ** 2 - (scatter[i] ?? 0) ** 2));
  });
  const size = places.length;
  const correlation = new Float64Array(size * size);
  for (let i = 0; i < size; i++) correlation[i * size + i] = 1;
  for (const { one, other, coefficient } of correlations) {
    const i = places.findIndex(({ name }) => name === one);
    const j = places.findIndex(({ name }) => name === other);
    if (i < 0 || j < 0) continue;
    // Stated of what the next brew finds; the scatter of brews is not correlated.
    const whole = (k: number): number => (figures[k]?.sd ?? 1) / (unit[k] ?? 1);
    correlation[i * size + j] = correlation[j * size + i] = coefficient * whole(i) * whole(j);
  }
  const factor = cholesky(correlation, size);
  return {
    places,
    centre: figures.map(({ value }) => value),
    unit,
    scatter: scatter.map((sd, i) => sd / (unit[i] ?? 1)),
    // Coefficients that contradict each other say nothing.
    variance: places.map(() => 1),
    precision: correlations.length > 0 && factor.leastShare > 0 ? inverse(factor) : identity(size),
  };
}

function identity(size: number): Float64Array {
  const matrix = new Float64Array(size * size);
  for (let i = 0; i < size; i++) matrix[i * size + i] = 1;
  return matrix;
}
