import { requireInRange } from "../errors";

/** A whole number that chooses one sequence of chance. */
export const SEED_RANGE = { unit: "", min: 0, max: 4294967295 } as const;

/** A sequence of chance that is the same for the same seed. */
export interface SeededRandom {
  /** Evenly spread from 0 up to but not including 1. */
  readonly uniform: () => number;
  /** Standard normal. */
  readonly normal: () => number;
  /** Chi-squared divided by its degrees of freedom, a whole number of them. */
  readonly scaledChiSquared: (df: number) => number;
}

/** From here on the cube-root approximation is closer than a thousandth to chi-squared. */
const MANY_DEGREES = 30;

/**
 * Starts a sequence of chance from a seed: a counter whose bits are mixed by multiplying and shifting.
 *
 * @returns Draws, each moving the sequence on.
 * @throws {@link OutOfRangeError} when the seed is not in its range; a fraction of it is cut off.
 * @source Steele, Lea and Flood 2014; Wilson and Hilferty 1931 (docs/sources.md#steele-2014, docs/sources.md#wilson-hilferty-1931)
 */
export function seededRandom(seed: number): SeededRandom {
  let counter = Math.trunc(requireInRange("seed", seed, SEED_RANGE)) >>> 0;

  function uniform(): number {
    counter = (counter + 0x9e3779b9) >>> 0;
    let mixed = Math.imul(counter ^ (counter >>> 16), 0x85ebca6b);
    mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
    return ((mixed ^ (mixed >>> 16)) >>> 0) / 4294967296;
  }

  // A radius and an angle give normal deviates in pairs; the second waits for the next call.
  let waiting: number | undefined;
  function normal(): number {
    if (waiting !== undefined) {
      const kept = waiting;
      waiting = undefined;
      return kept;
    }
    const radius = Math.sqrt(-2 * Math.log(1 - uniform()));
    const angle = 2 * Math.PI * uniform();
    waiting = radius * Math.sin(angle);
    return radius * Math.cos(angle);
  }

  function scaledChiSquared(df: number): number {
    if (df > MANY_DEGREES) return (1 - 2 / (9 * df) + normal() * Math.sqrt(2 / (9 * df))) ** 3;
    let sum = 0;
    for (let i = 0; i < df; i++) sum += normal() ** 2;
    return sum / df;
  }

  return { uniform, normal, scaledChiSquared };
}
