import { requireInRange } from "../errors";
import {
  chiSquaredQuantile,
  type Description,
  describe,
  type PairedDifference,
  pairedDifference,
  POOLING_RANGE,
  randomEffects,
  studentTQuantile,
  Z80,
} from "../statistics";
import { type PooledSpread, pooledSpread } from "../statistics/partial-pooling";
import { groupBrews, type GroupedBrews } from "./brews-groups";
import { type StrayBrews, strayBrews } from "./brews-outliers";

/** One number of one brew, in any unit. */
export interface BrewResult {
  readonly id: string;
  readonly planned: number;
  readonly measured: number;
  /** Standard uncertainty of the measured value. */
  readonly sd: number;
  /** Brewer, kettle, or by whatever the brews are told apart. */
  readonly group: string;
}

/** Measured values against each other, or how far each is from its own plan. */
export type ComparedAs = "measured" | "difference";

export interface ComparedResult {
  readonly id: string;
  readonly group: string;
  readonly value: number;
  readonly sd: number;
  readonly low80: number;
  readonly high80: number;
}

export interface BrewsCompared {
  /** In the order given. */
  readonly results: readonly ComparedResult[];
  /** From two brews on. */
  readonly description: Description | null;
  /** Mean of the brews with the interval that so few of them leave; from two on. */
  readonly mean: { readonly value: number; readonly low80: number; readonly high80: number } | null;
  /** Whether the brews differ by more than their readings are unsure; from two on. */
  readonly chance: { readonly q: number; readonly df: number; readonly p: number } | null;
  /** How far the brews themselves differ, without the uncertainty of the readings; from three on. */
  readonly between: PooledSpread | null;
  /** The sd between brews that so many brews would show four times of five; null for one. */
  readonly detectable: number | null;
  /** Measured less planned, pair by pair; from two on. */
  readonly againstPlan: PairedDifference | null;
  readonly grouped: GroupedBrews;
  readonly outliers: StrayBrews;
}

export const BREWS_RANGE = {
  brews: { unit: "", min: 1, max: 2000 },
  value: { unit: "", min: -1e9, max: 1e9 },
  sd: { unit: "", min: 1e-9, max: 1e9 },
} as const;

/**
 * Compares one number across brews: how far they differ, whether more than chance explains, and which lies too far out.
 *
 * Whether the brews differ is asked of their readings' stated uncertainties; the mean and the groups go by the scatter
 * among the brews. How great a spread so few brews could show at all is said as well.
 *
 * @param a.brews - Brews that were measured, each with its uncertainty and group.
 * @param a.as - What is compared: "measured" values, or each one's "difference" from its plan.
 * @returns Results with 80 % intervals, their spread and its test, groups and outliers, in the unit of the values.
 * @validRange 1 to 2000 brews; the spread between brews for 3 to 500.
 * @throws {@link OutOfRangeError} when there is none or too many, or a value is not a number.
 * @source DerSimonian and Laird 1986, the test of the weighted scatter (docs/sources.md#dersimonian-laird-1986); Gelman
 *   and others 2013 (docs/sources.md#gelman-2013); Student 1908 (docs/sources.md#student-1908)
 * @example
 * const [a, b] = [{ id: "a", planned: 12, measured: 12.4, sd: 0.25, group: "A" }, { id: "b", planned: 12, measured: 11.2, sd: 0.25, group: "B" }];
 * compareBrews({ brews: [a, b], as: "measured" }).chance; // q 11.52 on 1, p 0.0007
 */
export function compareBrews({
  brews,
  as,
}: {
  readonly brews: readonly BrewResult[];
  readonly as: ComparedAs;
}): BrewsCompared {
  requireInRange("number of brews", brews.length, BREWS_RANGE.brews);
  for (const { planned, measured, sd } of brews) {
    requireInRange("planned value", planned, BREWS_RANGE.value);
    requireInRange("measured value", measured, BREWS_RANGE.value);
    requireInRange("standard uncertainty", sd, BREWS_RANGE.sd);
  }
  const results = brews.map(({ id, group, planned, measured, sd }): ComparedResult => {
    const value = as === "measured" ? measured : measured - planned;
    return { id, group, value, sd, low80: value - Z80 * sd, high80: value + Z80 * sd };
  });
  const several = results.length > 1;
  const description = several ? describe(results.map(({ value }) => value)) : null;
  return {
    results,
    description,
    mean: description === null ? null : meanOf(description),
    chance: several ? chanceOf(results) : null,
    between: betweenOf(results),
    detectable: several ? detectableSpread(results) : null,
    againstPlan: several
      ? pairedDifference({ a: brews.map(({ measured }) => measured), b: brews.map(({ planned }) => planned) })
      : null,
    grouped: groupBrews(results),
    outliers: strayBrews(results),
  };
}

function meanOf({ n, mean, sd }: Description): NonNullable<BrewsCompared["mean"]> {
  const reach = (studentTQuantile({ p: 0.9, df: n - 1 }) * sd) / Math.sqrt(n);
  return { value: mean, low80: mean - reach, high80: mean + reach };
}

const asUnits = (results: readonly ComparedResult[]): { estimate: number; standardError: number }[] =>
  results.slice(0, POOLING_RANGE.units.max).map(({ value, sd }) => ({ estimate: value, standardError: sd }));

/** More brews than the pooling takes: the first of them, which the caller gives in the order that matters. */
function chanceOf(results: readonly ComparedResult[]): NonNullable<BrewsCompared["chance"]> {
  const { q, df, p } = randomEffects({ units: asUnits(results), method: "dersimonian-laird" });
  return { q, df, p };
}

function betweenOf(results: readonly ComparedResult[]): BrewsCompared["between"] {
  if (results.length < POOLING_RANGE.units.min) return null;
  return pooledSpread(asUnits(results));
}

/**
 * With a spread of τ between brews the test's sum is 1 + τ²/σ² times what it is without: it passes its limit of 5 % four
 * times of five where that factor lifts the lower fifth of the sum to the limit.
 */
function detectableSpread(results: readonly ComparedResult[]): number {
  const df = results.length - 1;
  const squares = results.reduce((sum, { sd }) => sum + sd ** 2, 0);
  const factor = chiSquaredQuantile({ p: 0.95, df }) / chiSquaredQuantile({ p: 0.2, df });
  return Math.sqrt((squares / results.length) * (factor - 1));
}
