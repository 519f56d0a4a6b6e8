import { requireInRange } from "../errors";
import type { Equipment, FigureCorrelation } from "../ledger";
import { chiSquaredUpperTail } from "../statistics";
import type { BrewEvidence } from "./brew-evidence";
import { correlationsOf } from "./correlations-of";
import { kettlePrior } from "./kettle-prior";
import { learnedFigure, type LearnedFigure } from "./learned-figure";
import { withinBounds, type Posterior } from "./posterior";
import { requireEvidence } from "./require-evidence";
import { reweighed } from "./reweighed";
import { tellsOf } from "./tells-of";
import { weighedBrew, type WeighedBrew } from "./weighed-brew";

export const CALIBRATION_RANGE = { unit: "", min: 0, max: 1000 } as const;

/** How one brew fits the figures that all brews together give. */
export interface BrewFit {
  /** Squared distance of its readings, over its variance with the scatter of brews in it. */
  readonly chiSquared: number;
  /** Readings that count. */
  readonly df: number;
  /** How probable a distance as large is when nothing is wrong. */
  readonly p: number;
  /** How much it counts: 1, or less for a brew that is farther off than one in a hundred. */
  readonly weight: number;
}

export interface Calibration {
  /** Every figure with an uncertainty, in the order of the profile. */
  readonly figures: readonly LearnedFigure[];
  /** The profile with what was learned; a figure of which no brew tells anything stays as it was. */
  readonly equipment: Equipment;
  /** Figures that were learned together and are off together; to stand in this equipment, or be handed to `intervals` with it. */
  readonly correlations: readonly FigureCorrelation[];
  /** In the order of the brews given. */
  readonly brews: readonly BrewFit[];
}

/**
 * Learns the figures of one kettle from its brews.
 *
 * What the profile says is one piece of knowledge, with its uncertainty, and each brew is another; they are added up by
 * their information, so that what one brew cannot tell apart (conversion and absorption, trub and hoses) stays open until
 * brews that differ tell it. Figures scatter from brew to brew about the kettle's own. A brew whose readings are farther off
 * than one in a hundred counts less, in proportion.
 *
 * @param a.equipment - The kettle as it was known before these brews: figures typical, stated, measured by a trial, or those
 * that `pool` starts a kettle with. Figures learned from the same brews would count them twice.
 * @param a.correlations - Pairs of figures of that profile whose errors go together, as `pool` gives them; left out, those that
 * stand in it.
 * @param a.brews - What each brew says, in order of time.
 * @returns Figures with standard error, count and trend, the profile with them, and how each brew fits.
 * @validRange Up to 1000 brews.
 * @throws {@link OutOfRangeError} when there are too many brews, or evidence is not what `brewEvidence` gives.
 * @source Gelman and others 2013, chapters 3 and 14 (docs/sources.md#gelman-2013); weights of Huber 1964
 * (docs/sources.md#huber-1964)
 * @example
 * calibrate({ equipment, brews: [evidence] }).figures[2]; // { name: "kettle.boilOff", value: 2.61, standardError: 0.14, brews: 1, … }
 */
export function calibrate(a: {
  readonly equipment: Equipment;
  readonly brews: readonly BrewEvidence[];
  readonly correlations?: readonly FigureCorrelation[];
}): Calibration {
  requireInRange("number of brews", a.brews.length, CALIBRATION_RANGE);
  for (const brew of a.brews) requireEvidence(brew);
  const prior = kettlePrior(a.equipment, a.correlations ?? a.equipment.correlations ?? []);
  const brews = a.brews.map((evidence) => weighedBrew(prior, evidence));
  const { weights, found } = reweighed(prior, brews);
  const bounded = withinBounds(prior, found);
  const telling = brews.map((brew) => tellsOf(prior, brew));
  const learned = { equipment: a.equipment, prior, brews, weights, telling, found, bounded };
  const figures = prior.places.map((_, k) => learnedFigure(learned, k));
  return {
    figures,
    equipment: prior.places.reduce((made, { withFigure }, k) => {
      const figure = figures[k]?.figure;
      return figure === undefined ? made : withFigure(made, figure);
    }, a.equipment),
    correlations: correlationsOf(prior, bounded, figures),
    brews: brews.map((brew, b) => fitOf(brew, found, weights[b] ?? 1)),
  };
}

function fitOf({ misfitAt, readings }: WeighedBrew, { mean }: Posterior, weight: number): BrewFit {
  const chiSquared = misfitAt(mean);
  const p = readings === 0 ? 1 : chiSquaredUpperTail({ chiSquared: Math.min(chiSquared, 1e6), df: readings });
  return { chiSquared, df: readings, p, weight };
}
