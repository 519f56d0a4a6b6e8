import { findRoot } from "../numerics";
import { normalCdf } from "./normal-cdf";

/** One normal distribution of a mixture; the weights add up to 1. */
export interface MixturePart {
  readonly weight: number;
  readonly centre: number;
  readonly variance: number;
}

/** Nothing of a normal distribution worth counting lies further out, in standard deviations. */
const REACH = 12;

/**
 * Finds the value that a mixture of normal distributions stays below with a probability.
 *
 * @returns Quantile, within 1e-9 of the sd of the narrowest part.
 */
export function mixtureQuantile(parts: readonly MixturePart[], probability: number): number {
  const deviates = parts.map(({ weight, centre, variance }) => ({ weight, centre, sd: Math.sqrt(variance) }));
  const below = (x: number): number =>
    deviates.reduce((sum, { weight, centre, sd }) => sum + weight * normalCdf(clamped((x - centre) / sd)), 0);
  const low = Math.min(...deviates.map(({ centre, sd }) => centre - REACH * sd));
  const high = Math.max(...deviates.map(({ centre, sd }) => centre + REACH * sd));
  return findRoot({
    f: (x) => below(x) - probability,
    low,
    high,
    tolerance: 1e-9 * Math.min(...deviates.map(({ sd }) => sd)),
  }).x;
}

const clamped = (deviate: number): number => Math.min(1e6, Math.max(-1e6, deviate));
