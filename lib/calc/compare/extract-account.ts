import { followBrew, type BrewFigures, type FollowedBrew } from "./brew-figures";
import { slopesOf } from "./followed-readings";
import { sdAlong } from "./improve-by-readings";
import type { PlannedBrew } from "./planned-brew";
import type { SettledBrew } from "./settle-brew";

/** Whether a line rests on readings, on the plan, or on both. */
export type RestsOn = "readings" | "both" | "plan" | "weights";

/** A line of the account holds what is there, gains what is added, or loses what goes. */
export interface ExtractLine {
  readonly id: ExtractLineId;
  readonly label: string;
  readonly effect: "holds" | "gains" | "loses";
  readonly plannedKg: number;
  /** Standard uncertainty of the prediction; null where the plan has none. */
  readonly plannedSd: number | null;
  /** Share of all extract that was weighed out, fraction. */
  readonly plannedShare: number;
  /** From readings and plan together; these add up. */
  readonly kg: number;
  /** Standard uncertainty; null where neither plan nor readings tell. */
  readonly sd: number | null;
  readonly share: number;
  readonly restsOn: RestsOn;
  /** The same where readings bear on the line; null where it rests on the plan alone. */
  readonly measuredKg: number | null;
  readonly measuredSd: number | null;
  readonly measuredShare: number | null;
}

export interface ExtractAccount {
  /** All extract that was weighed out: in the grist and in what the kettle gets. */
  readonly weighedOutKg: number;
  readonly lines: readonly ExtractLine[];
}

const LINES = {
  potential: { label: "In the grist", effect: "holds" },
  undissolved: { label: "Not dissolved in the mash", effect: "loses" },
  grain: { label: "Left in the grain", effect: "loses" },
  beforeBoil: { label: "Before the boil", effect: "holds" },
  added: { label: "Sugar and malt extract added", effect: "gains" },
  endOfBoil: { label: "End of boil", effect: "holds" },
  left: { label: "Left with trub, hops and hoses", effect: "loses" },
  fermenter: { label: "In the fermenter", effect: "holds" },
  fermented: { label: "Fermented", effect: "loses" },
  residual: { label: "Left in the beer", effect: "holds" },
} as const;

export type ExtractLineId = keyof typeof LINES;

// The keys of a constant object are what they are; Object.keys only forgets them.
export const EXTRACT_LINE_IDS = Object.keys(LINES) as readonly ExtractLineId[];

/** Share of the plan's variance below which readings decide a line, and above which they say nothing of it. */
const DECIDED = 0.5;
const UNTOUCHED = 0.98;

/** Weights are taken as exact: below this share of the extract an uncertainty is rounding. */
const EXACT_SHARE = 1e-6;

/**
 * Follows the extract from the grist to the beer: what is there at each station, and what was lost on the way.
 *
 * Grist and additions count as weighed out by the plan. Everything else follows from the figures that plan and readings
 * settle on together, so the lines add up to the last digit.
 *
 * @param settled - The brew by plan and readings.
 * @param unread - The brew by the plan alone.
 * @returns Lines in the order of the process.
 * @source Mass balance (docs/sources.md#mass-balance); Balling (docs/sources.md#balling-1865)
 */
export function extractAccount(settled: SettledBrew, unread: SettledBrew): ExtractAccount {
  const { plan } = settled;
  const weighedOutKg = plan.potentialKg + plan.addedExtractKg;
  const planned = lineValues(unread);
  const best = lineValues(settled);
  const lines = EXTRACT_LINE_IDS.map((id, i): ExtractLine => {
    const before = { kg: planned[i]?.kg ?? 0, sd: known(planned[i]?.sd, weighedOutKg) };
    const after = { kg: best[i]?.kg ?? 0, sd: known(best[i]?.sd, weighedOutKg) };
    const restsOn = rests(before.sd, after.sd, weighedOutKg);
    const share = after.kg / weighedOutKg;
    const isMeasured = restsOn !== "plan";
    return {
      id,
      ...LINES[id],
      plannedKg: before.kg,
      plannedSd: before.sd,
      plannedShare: before.kg / weighedOutKg,
      ...after,
      share,
      restsOn,
      measuredKg: isMeasured ? after.kg : null,
      measuredSd: isMeasured ? after.sd : null,
      measuredShare: isMeasured ? share : null,
    };
  });
  return { weighedOutKg, lines };
}

/**
 * Finds how each line of the account changes with the figures of the brew.
 *
 * @returns Slopes, kg per unit: a row for each line, a column for each of `BREW_FIGURES`.
 */
export function lineSlopes({ plan, figures }: SettledBrew): readonly (readonly number[])[] {
  return slopesOf(plan, figures, (brew, at) => lineKg(plan, brew, at));
}

function lineValues(settled: SettledBrew): readonly { readonly kg: number; readonly sd: number }[] {
  const { plan, figures, covariance } = settled;
  const slopes = lineSlopes(settled);
  return lineKg(plan, followBrew(plan, figures), figures).map((kg, i) => ({
    kg,
    sd: sdAlong(slopes[i] ?? [], covariance),
  }));
}

/** As uncertain as all that was weighed out is not known at all. */
function known(sd: number | undefined, weighedOutKg: number): number | null {
  return sd !== undefined && sd < weighedOutKg ? sd : null;
}

function rests(plannedSd: number | null, sd: number | null, weighedOutKg: number): RestsOn {
  if (sd === null) return "plan";
  if (plannedSd === null) return "readings";
  if (plannedSd <= EXACT_SHARE * weighedOutKg) return "weights";
  const left = (sd / plannedSd) ** 2;
  return left <= DECIDED ? "readings" : left < UNTOUCHED ? "both" : "plan";
}

/** In the order of the lines. */
function lineKg(plan: PlannedBrew, brew: FollowedBrew, { dissolvedKg, lauterLostKg }: BrewFigures): readonly number[] {
  const kg: Readonly<Record<ExtractLineId, number>> = {
    potential: plan.potentialKg,
    undissolved: plan.potentialKg - dissolvedKg,
    grain: lauterLostKg,
    beforeBoil: brew.beforeBoil.extractKg,
    added: plan.addedExtractKg,
    endOfBoil: brew.endOfBoil.extractKg,
    left: brew.leftExtractKg,
    fermenter: brew.fermenter.extractKg,
    fermented: brew.fermenter.extractKg - brew.residualKg,
    residual: brew.residualKg,
  };
  return EXTRACT_LINE_IDS.map((id) => kg[id]);
}
