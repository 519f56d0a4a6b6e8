import type { Equipment, FigureCorrelation, FigureName } from "../ledger";
import { CHANGE_POINT_RANGE, changePoint, changesByOrder, type ChangePoint, type PooledUnit } from "../statistics";
import { requireInRange } from "../errors";
import type { BrewEvidence } from "./brew-evidence";
import { kettlePrior } from "./kettle-prior";
import { requireEvidence } from "./require-evidence";
import { reweighed } from "./reweighed";
import { tellsOf } from "./tells-of";
import { product } from "./product";
import { weighedBrew, type WeighedBrew } from "./weighed-brew";

export const DRIFT_RANGE = { ...CHANGE_POINT_RANGE, min: 0 } as const;

/** The likeliest change of one figure in the course of the brews. */
export interface Drift {
  readonly name: FigureName;
  /** How many of the brews given stand before it. */
  readonly after: number;
  /** The figure before and after it, with all others as they are found. */
  readonly before: number;
  readonly behind: number;
  /** Standard error of the difference. */
  readonly differenceSd: number;
  /** How probable a change as clear is by chance, at any brew, in this figure. */
  readonly p: number;
  /**
   * How probable one as clear is in any of the figures tested, by the errors of the readings and by the order of the brews,
   * whichever is the more probable.
   */
  readonly pOfAny: number;
}

/** With fewer brews that tell of it a figure is not tested. */
const LEAST_BREWS = 3;

/**
 * Looks for a brew from which on a figure of the kettle is another: a new crush, pump or whirlpool, scale on the element.
 *
 * Each figure is tested alone, with the others as all brews find them, by the likelihood-ratio test of `changePoint`; a change
 * of one shows in those it is confounded with as well, and the clearest comes first. Readings that are wrong and were not found
 * look like a change to a test that trusts their errors; so the order of the brews is asked too (`changesByOrder`), which keeps
 * the level for all figures and brews together. Fewer than five brews have too few orders to tell anything at 0.05.
 *
 * @param a.equipment - The kettle as it was known before these brews.
 * @param a.brews - What each brew says, in order of time.
 * @returns The likeliest change of each figure with at least three brews that tell of it, the most probable first; figures
 * without a change are among them, with a large p.
 * @validRange Up to 400 brews.
 * @throws {@link OutOfRangeError} when there are too many brews, or evidence is not what `brewEvidence` gives.
 * @source Hawkins 1977; Antoch and Hušková 2001; Westfall and Young 1993 (docs/sources.md#hawkins-1977,
 * docs/sources.md#antoch-huskova-2001, docs/sources.md#westfall-young-1993)
 * @example
 * driftTest({ equipment, brews })[0]; // { name: "kettle.boilOff", after: 6, before: 2.4, behind: 2.9, p: 0.0004, pOfAny: 0.003, … }
 */
export function driftTest(a: {
  readonly equipment: Equipment;
  readonly brews: readonly BrewEvidence[];
  readonly correlations?: readonly FigureCorrelation[];
}): Drift[] {
  requireInRange("number of brews", a.brews.length, DRIFT_RANGE);
  for (const brew of a.brews) requireEvidence(brew);
  const prior = kettlePrior(a.equipment, a.correlations ?? a.equipment.correlations ?? []);
  const brews = a.brews.map((evidence) => weighedBrew(prior, evidence));
  const { weights, found } = reweighed(prior, brews);
  const { mean } = found;
  const widened = scatterOf(brews, weights, mean);
  const telling = brews.map((brew) => tellsOf(prior, brew));
  const size = prior.places.length;
  const tested = prior.places.flatMap(({ name }, k): Tested[] => {
    const values = brews.map((brew, b): PooledUnit | null => {
      if (telling[b]?.[k] !== true) return null;
      const information = brew.precision[k * size + k] ?? 0;
      const slope = (brew.pull[k] ?? 0) - product(brew.precision, k, mean);
      return {
        estimate: (mean[k] ?? 0) + slope / information,
        standardError: widened / Math.sqrt((weights[b] ?? 1) * information),
      };
    });
    const told = values.filter((value) => value !== null);
    const change = told.length < LEAST_BREWS ? null : changePoint(told);
    return change?.ok === true
      ? [{ name, values, change, centre: prior.centre[k] ?? 0, unit: prior.unit[k] ?? 1 }]
      : [];
  });
  const byOrder = tested.length === 0 ? [] : changesByOrder(tested.map(({ values }) => values));
  return tested
    .map((test, k) => driftOf(test, Math.max(Math.min(1, test.change.p * tested.length), byOrder[k] ?? 1)))
    .sort((one, other) => one.p - other.p);
}

interface Tested {
  readonly name: FigureName;
  /** What each brew says of the figure, in typical uncertainties; null where it tells nothing. */
  readonly values: readonly (PooledUnit | null)[];
  readonly change: ChangePoint;
  readonly centre: number;
  readonly unit: number;
}

function driftOf({ name, values, change, centre, unit }: Tested, pOfAny: number): Drift {
  const told = values.flatMap((value, b) => (value === null ? [] : [b]));
  return {
    ...{ name, p: change.p, pOfAny },
    after: told[change.after] ?? 0,
    before: centre + unit * change.before,
    behind: centre + unit * change.behind,
    differenceSd: unit * change.differenceSd,
  };
}

/** By how much the readings of all brews scatter more than they should: a kettle that is unsteady has not changed (Birge). */
function scatterOf(brews: readonly WeighedBrew[], weights: readonly number[], mean: Float64Array): number {
  const misfit = brews.reduce((sum, { misfitAt }, b) => sum + (weights[b] ?? 1) * misfitAt(mean), 0);
  const readings = brews.reduce((sum, brew) => sum + brew.readings, 0);
  return readings === 0 ? 1 : Math.sqrt(Math.max(1, misfit / readings));
}
