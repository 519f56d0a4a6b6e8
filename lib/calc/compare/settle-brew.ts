import type { Intervals } from "../ledger";
import { Z80 } from "../statistics";
import type { Variable } from "./balance-variables";
import { BREW_FIGURES, followBrew, plannedFigures, type BrewFigureId, type BrewFigures } from "./brew-figures";
import { readingIn, slopesOf, type FollowedReading } from "./followed-readings";
import { improveByReadings, type Covariance, type Tangent } from "./improve-by-readings";
import type { ComparedReading } from "./latest-readings";
import type { PlannedBrew } from "./planned-brew";

/** A brew that closes every balance, as near as can be to plan and readings, each by its uncertainty. */
export interface SettledBrew {
  readonly plan: PlannedBrew;
  readonly figures: BrewFigures;
  /** Of the figures, in the order of `BREW_FIGURES`. */
  readonly covariance: Covariance;
}

/** A figure of which nothing is known may be this far off: a multiple of its planned size, and no less than this. */
const ANYTHING = { times: 30, least: 30 } as const;

/** Products of a volume and a strength are near straight over a reading's error: the fourth tangent is the last. */
const TANGENTS = 4;

/**
 * Finds the figures of a brew from the plan and the readings that count.
 *
 * The least squares of `reconcileBrew`, written in the figures from which the readings follow: so the balances hold to
 * the last digit, and whatever follows from the figures has its uncertainty. Tangents are laid anew where the last turn
 * ended.
 *
 * @param a.variables - Readings and figures of the plan; one without uncertainty does not count.
 * @param a.final - The final gravity that counts: with it the attenuation is measured, without it planned.
 * @returns Figures with their covariance.
 * @source Narasimhan and Jordache 2000, chapter 5 (docs/sources.md#narasimhan-jordache-2000)
 */
export function settleBrew(a: {
  readonly plan: PlannedBrew;
  readonly intervals: Intervals;
  readonly variables: readonly Variable[];
  readonly final: ComparedReading | null;
}): SettledBrew {
  const { plan } = a;
  const start = startOf(a);
  const prior = priorOf(a, start);
  const readings = readingsThatCount(a);
  let settled: SettledBrew = { plan, figures: start, covariance: prior };
  for (let turn = 0; turn < TANGENTS; turn++) {
    const { moved, covariance } = improveByReadings(prior, tangentsOf(plan, readings, start, settled.figures));
    settled = { plan, figures: figuresFrom((id, i) => start[id] + (moved[i] ?? 0)), covariance };
  }
  return settled;
}

interface CountedReading {
  readonly id: FollowedReading;
  readonly value: number;
  readonly sd: number;
}

function readingsThatCount({ variables, final }: Parameters<typeof settleBrew>[0]): CountedReading[] {
  const balanced = variables.flatMap(({ reading, value, sigma }): CountedReading[] =>
    reading === null || reading === "water.mash" || sigma === null ? [] : [{ id: reading, value, sd: sigma }],
  );
  return final === null ? balanced : [...balanced, { id: "fermenter.finalExtract", value: final.value, sd: final.sd }];
}

function tangentsOf(
  plan: PlannedBrew,
  readings: readonly CountedReading[],
  start: BrewFigures,
  at: BrewFigures,
): Tangent[] {
  const brew = followBrew(plan, at);
  const slopesOfReadings = slopesOf(plan, at, (each, figures) =>
    readings.map(({ id }) => readingIn(each, figures, id)),
  );
  return readings.map(({ id, value, sd }, i) => {
    const slopes = slopesOfReadings[i] ?? [];
    const alongToStart = BREW_FIGURES.reduce((sum, each, j) => sum + (slopes[j] ?? 0) * (at[each] - start[each]), 0);
    return { slopes, sd, off: value - readingIn(brew, at, id) + alongToStart };
  });
}

/** Where the figures stand before the readings; of the mash water its own reading says so. */
function startOf({ plan, variables }: Parameters<typeof settleBrew>[0]): BrewFigures {
  const planned = plannedFigures(plan);
  return figuresFrom((id) => variables.find((each) => each.id === id)?.value ?? planned[id]);
}

function priorOf(a: Parameters<typeof settleBrew>[0], start: BrewFigures): Covariance {
  const sdOf = (id: BrewFigureId): number => {
    const known = id === "attenuation" ? attenuationSd(a) : a.variables.find((each) => each.id === id)?.sigma;
    return known ?? Math.max(ANYTHING.least, ANYTHING.times * Math.abs(start[id]));
  };
  return BREW_FIGURES.map((id, i) => BREW_FIGURES.map((_, j) => (i === j ? sdOf(id) ** 2 : 0)));
}

function attenuationSd({ intervals, final }: Parameters<typeof settleBrew>[0]): number | null {
  const interval = intervals["fermenter.attenuation"];
  return final !== null || interval === undefined ? null : (interval.high80 - interval.low80) / (2 * Z80);
}

function figuresFrom(of: (id: BrewFigureId, i: number) => number): BrewFigures {
  const at = (id: BrewFigureId): number => of(id, BREW_FIGURES.indexOf(id));
  return {
    "water.mash": at("water.mash"),
    spargeL: at("spargeL"),
    dissolvedKg: at("dissolvedKg"),
    lauterLostKg: at("lauterLostKg"),
    retainedKg: at("retainedKg"),
    evaporatedKg: at("evaporatedKg"),
    leftKg: at("leftKg"),
    beerLeftL: at("beerLeftL"),
    attenuation: at("attenuation"),
  };
}
