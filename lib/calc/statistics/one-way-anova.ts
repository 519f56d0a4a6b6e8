import { OutOfRangeError, requireInRange } from "../errors";
import { F_RANGE, fUpperTail } from "./f-upper-tail";
import { exactSum, requireSample, sampleOf } from "./sample";

export const ANOVA_GROUPS_RANGE = { unit: "", min: 2, max: 10_000 } as const;

export interface OneWayAnova {
  /** Mean square between over mean square within. */
  readonly f: number;
  readonly betweenDf: number;
  readonly withinDf: number;
  readonly betweenSs: number;
  readonly withinSs: number;
  /** Share of the scatter that lies between the groups. */
  readonly rSquared: number;
  readonly residualSd: number;
  /** Probability of a ratio at least as large where the groups do not differ. */
  readonly p: number;
}

/**
 * Splits the scatter of grouped values into what lies between and what lies within the groups.
 *
 * All values are measured from the first, so that leading digits which they share cost none of the answer's.
 *
 * @param groups - Values by group; the groups may differ in size.
 * @returns Sums of squares, their ratio and its probability, to about ten digits of what the values hold.
 * @validRange From two groups on, none empty and one of two values at least, with some scatter within.
 * @throws {@link OutOfRangeError} when there are too few values, one is not a number, or none differs from its group: then
 *   there is nothing to measure the groups by.
 * @source Analysis of variance; certified by NIST StRD, SiRstv and others (docs/sources.md#nist-strd)
 * @example
 * oneWayAnova([[1, 2, 3], [2, 3, 4]]); // f 1.5, p 0.288
 */
export function oneWayAnova(groups: readonly (readonly number[])[]): OneWayAnova {
  requireInRange("number of groups", groups.length, ANOVA_GROUPS_RANGE);
  for (const group of groups) requireSample("value", group, 1);
  const n = groups.reduce((sum, group) => sum + group.length, 0);
  const betweenDf = groups.length - 1;
  const withinDf = requireInRange("degrees of freedom within", n - groups.length, {
    unit: "",
    min: 1,
    max: F_RANGE.df.max,
  });

  const origin = groups[0]?.[0] ?? 0;
  const samples = groups.map((group) => sampleOf(group, origin));
  const grandShift = exactSum(samples.map((sample) => sample.n * sample.shift)) / n;
  const betweenSs = exactSum(samples.map((sample) => sample.n * (sample.shift - grandShift) ** 2));
  const withinSs = exactSum(samples.map((sample) => sample.squares));
  const f = betweenSs / betweenDf / (withinSs / withinDf);
  // Written this way round so that 0 / 0 fails too.
  if (!(f <= F_RANGE.f.max)) {
    throw new OutOfRangeError("sum of squares within groups", withinSs, {
      unit: "",
      min: Number.MIN_VALUE,
      max: 1e106,
    });
  }
  return {
    f,
    betweenDf,
    withinDf,
    betweenSs,
    withinSs,
    rSquared: betweenSs / (betweenSs + withinSs),
    residualSd: Math.sqrt(withinSs / withinDf),
    p: fUpperTail({ f, df1: betweenDf, df2: withinDf }),
  };
}
