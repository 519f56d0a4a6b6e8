import type { Equipment, FigureCorrelation, FigureName } from "../ledger";
import { CHANGE_POINT_RANGE, changePoint } from "../statistics";
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
  /** The same in any of the figures tested: each is a chance to be wrong. */
  readonly pOfAny: number;
}

/** With fewer brews that tell of it a figure is not tested. */
const LEAST_BREWS = 3;

/**
 * Looks for a brew from which on a figure of the kettle is another: a new crush, pump or whirlpool, scale on the element.
 *
 * Each figure is tested alone, with the others as all brews find them, by the likelihood-ratio test of `changePoint`; a change
 * of one shows in those it is confounded with as well, and the clearest comes first. Whoever asks after each brew asks
 * often: at a p of any figure of 0.01 a steady kettle is accused now and then (docs/learning.md tells how often).
 *
 * @param a.equipment - The kettle as it was known before these brews.
 * @param a.brews - What each brew says, in order of time.
 * @returns The likeliest change of each figure with at least three brews that tell of it, the most probable first; figures
 * without a change are among them, with a large p.
 * @validRange Up to 400 brews.
 * @throws {@link OutOfRangeError} when there are too many brews, or evidence is not what `brewEvidence` gives.
 * @source Hawkins 1977 (docs/sources.md#hawkins-1977)
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
  const prior = kettlePrior(a.equipment, a.correlations ?? []);
  const brews = a.brews.map((evidence) => weighedBrew(prior, evidence));
  const { weights, found } = reweighed(prior, brews);
  const { mean } = found;
  const widened = scatterOf(brews, weights, mean);
  const telling = brews.map((brew) => tellsOf(prior, brew));
  const size = prior.places.length;
  const tested = prior.places.flatMap(({ name }, k): Omit<Drift, "pOfAny">[] => {
    const counted = brews.flatMap((brew, b) => (telling[b]?.[k] === true ? [{ brew, b }] : []));
    if (counted.length < LEAST_BREWS) return [];
    const values = counted.map(({ brew, b }) => {
      const information = brew.precision[k * size + k] ?? 0;
      const slope = (brew.pull[k] ?? 0) - product(brew.precision, k, mean);
      return {
        estimate: (mean[k] ?? 0) + slope / information,
        standardError: widened / Math.sqrt((weights[b] ?? 1) * information),
      };
    });
    const change = changePoint(values);
    if (!change.ok) return [];
    const { after, before, behind, differenceSd, p } = change;
    const unit = prior.unit[k] ?? 1;
    const stated = (z: number): number => (prior.centre[k] ?? 0) + unit * z;
    return [
      {
        name,
        after: counted[after]?.b ?? 0,
        before: stated(before),
        behind: stated(behind),
        differenceSd: unit * differenceSd,
        p,
      },
    ];
  });
  return tested
    .map((drift) => ({ ...drift, pOfAny: Math.min(1, drift.p * tested.length) }))
    .sort((one, other) => one.p - other.p);
}

/** By how much the readings of all brews scatter more than they should: a kettle that is unsteady has not changed (Birge). */
function scatterOf(brews: readonly WeighedBrew[], weights: readonly number[], mean: Float64Array): number {
  const misfit = brews.reduce((sum, { misfitAt }, b) => sum + (weights[b] ?? 1) * misfitAt(mean), 0);
  const readings = brews.reduce((sum, brew) => sum + brew.readings, 0);
  return readings === 0 ? 1 : Math.sqrt(Math.max(1, misfit / readings));
}
