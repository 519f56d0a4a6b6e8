/** What is known of one unit by itself. */
export interface PooledUnit {
  readonly estimate: number;
  readonly standardError: number;
}

/** One value of the sd between units, with what follows from it. */
export interface Weighted {
  readonly between: number;
  /** Share of the posterior that this value stands for. */
  readonly weight: number;
  /** Mean of all units, and its variance, given this value. */
  readonly mean: number;
  readonly variance: number;
}

/** What was known of units of the kind before any was looked at. */
export interface KindPrior {
  /** Of the mean of all units. */
  readonly mean: number;
  readonly meanSd: number;
  /** The sd between units is taken from half a normal curve of this width; its mean square is the square of this. */
  readonly betweenScale: number;
}

/** Longest step of the logarithm of the sd: the integrand has no feature narrower than a few of them. */
const LONGEST_STEP = 0.1;
/** Start of the grid as a share of the least standard error, and end as a multiple of the widest deviation. */
const NEAR_ZERO = 1e-5;
const FAR = 20;
/** The same for a prior that ends by itself, in its widths. */
const NARROW = 1e-3;
const WIDE = 6;
/** End weights of Gregory's rule, which lets an integrand end anywhere. */
const LAST = [3 / 8, 7 / 6, 23 / 24];

/**
 * Weighs the values that the sd between units may have, by the trapezium rule along its logarithm.
 *
 * @param prior - What was known of the kind; flat on mean and sd where it is left out.
 * @returns Values from near 0 to the end of the prior, with shares that add up to 1.
 * @source Gelman and others 2013, equation 5.21 (docs/sources.md#gelman-2013)
 */
export function betweenUnits(units: readonly PooledUnit[], prior?: KindPrior): readonly Weighted[] {
  const [from, to] = prior === undefined ? reach(units) : [NARROW * prior.betweenScale, WIDE * prior.betweenScale];
  const least = Math.log(from);
  const span = Math.log(to) - least;
  const count = Math.ceil(span / Math.min(LONGEST_STEP, 0.5 / Math.sqrt(2 * Math.max(1, units.length))));
  const step = span / count;

  const nodes = Array.from({ length: count + 1 }, (_, i) => ({
    i,
    ...given(units, Math.exp(least + i * step), prior),
  }));
  const highest = Math.max(...nodes.map(({ logDensity }) => logDensity));
  const weighed = nodes.map(({ i, logDensity, between, mean, variance }) => {
    // The first stands for all below it as well, where the density is level.
    const width = i === 0 ? 1 + step / 2 : step * (LAST[count - i] ?? 1);
    return { between, mean, variance, weight: width * between * Math.exp(logDensity - highest) };
  });
  const total = weighed.reduce((sum, { weight }) => sum + weight, 0);
  return weighed.map((node) => ({ ...node, weight: node.weight / total })).filter(({ weight }) => weight > 1e-15);
}

function reach(units: readonly PooledUnit[]): readonly [from: number, to: number] {
  const errors = units.map(({ standardError }) => standardError);
  const estimates = units.map(({ estimate }) => estimate);
  const widest = Math.max(...estimates) - Math.min(...estimates) + Math.max(...errors);
  return [NEAR_ZERO * Math.min(...errors), FAR * widest];
}

function given(
  units: readonly PooledUnit[],
  between: number,
  prior: KindPrior | undefined,
): { readonly between: number; readonly mean: number; readonly variance: number; readonly logDensity: number } {
  let precision = 0;
  let weighted = 0;
  const origin = units[0]?.estimate ?? prior?.mean ?? 0;
  if (prior !== undefined) {
    precision = prior.meanSd ** -2;
    weighted = precision * (prior.mean - origin);
  }
  for (const { estimate, standardError } of units) {
    const own = 1 / (standardError ** 2 + between ** 2);
    precision += own;
    weighted += own * (estimate - origin);
  }
  const mean = origin + weighted / precision;
  let logDensity = -Math.log(precision) / 2;
  for (const { estimate, standardError } of units) {
    const variance = standardError ** 2 + between ** 2;
    logDensity -= (Math.log(variance) + (estimate - mean) ** 2 / variance) / 2;
  }
  if (prior !== undefined) {
    logDensity -= (((prior.mean - mean) / prior.meanSd) ** 2 + (between / prior.betweenScale) ** 2) / 2;
  }
  return { between, mean, variance: 1 / precision, logDensity };
}
