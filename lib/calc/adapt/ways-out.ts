import { brew, type Ambient, type Equipment, type Ledger, type Limit, type Recipe } from "../ledger";
import { findRoot } from "../numerics";
import { fraction, litres, litresPerKilogram, minutes, type Litres } from "../units";
import { withMaltExtract } from "./malt-extract";
import type { Intention, WayOut, WayOutKind } from "./intention";
import { solveAmounts } from "./solve-amounts";

/** What a change costs against the intention, for the ranking: decided in docs/decisions/ways-out.md. */
const WEIGHT = {
  volume: 1,
  topUp: 0.3,
  maltExtract: 0.6,
  thickness: 0.1,
  droppedRest: 0.15,
  secondMash: 0.35,
  boilHour: 0.2,
  secondBrew: 0.5,
} as const;

/** A limit that is met exactly counts as kept; half of the slack that the limits themselves allow. */
const EXACTLY_MET = 5e-10;
/** The root is passed by a hair, so that its rounding does not put the answer outside. */
const ROOT_TOLERANCE = 1e-4;
const PAST_THE_ROOT = 1 + 2 * ROOT_TOLERANCE;
const LONGEST_BOIL_MIN = 180;
/** Thinner mashes convert slowly. Common practice, no source. */
const THINNEST_L_PER_KG = 5;
const MOST_BREWS = 4;

export interface Misfit {
  readonly intention: Intention;
  readonly equipment: Equipment;
  readonly ambient: Ambient;
  readonly intoFermenter: Litres;
  readonly reasons: readonly Limit[];
}

/** The carbonation is a matter of the container, not of the kettle. */
export const isBroken = (limit: Limit): boolean => !limit.ok && limit.id !== "carbonation";

interface Attempt {
  readonly recipe: Recipe;
  readonly ledger: Ledger;
  readonly fits: boolean;
  /** Worst overrun of any limit, relative. */
  readonly overrun: number;
}

interface Change {
  readonly intention?: Intention;
  readonly intoFermenter?: number;
  readonly topUp?: number;
}

/**
 * Searches the ways out of a brew that does not fit.
 *
 * @returns Those that keep every limit, each with its recipe and ledger, the nearest to the intention first.
 * @source Limits as stated in the equipment profile; weights of the ranking are a decision of this project
 */
export function waysOut(misfit: Misfit): WayOut[] {
  return [
    lessVolume(misfit),
    moreVolume(misfit),
    waterAfterTheBoil(misfit),
    maltExtract(misfit),
    thickerMash(misfit),
    thinnerMash(misfit),
    fewerRests(misfit),
    twoMashes(misfit),
    longerBoil(misfit),
    splitBatch(misfit),
  ]
    .filter((way) => way !== null)
    .sort((one, other) => one.distance - other.distance);
}

function attempt(misfit: Misfit, change: Change): Attempt | null {
  const { equipment, ambient } = misfit;
  const solved = solveAmounts({
    intention: change.intention ?? misfit.intention,
    equipment,
    ambient,
    intoFermenter: litres(change.intoFermenter ?? misfit.intoFermenter),
    topUp: litres(change.topUp ?? 0),
  });
  if (!solved.ok) return null;
  const outcome = brew({ recipe: solved.recipe, equipment, ambient });
  if (!outcome.ok) return null;
  const { limits } = outcome.ledger;
  return {
    recipe: solved.recipe,
    ledger: outcome.ledger,
    fits: !limits.some(isBroken),
    overrun: overrunOf(limits),
  };
}

function overrunOf(limits: readonly Limit[]): number {
  let worst = -1;
  for (const limit of limits) {
    if (limit.id === "carbonation") continue;
    const relative = limit.value / limit.bound - 1;
    worst = Math.max(worst, limit.side === "at most" ? relative : -relative);
  }
  return worst;
}

/** Tried from the most down: too much of a change may break a limit that the beginning of it keeps. */
const SHARES_OF_THE_MOST = [1, 0.8, 0.5, 0.2] as const;

/** Smallest amount of a change that keeps every limit; null when no amount up to the most does. */
function smallest(
  misfit: Misfit,
  most: number,
  change: (amount: number) => Change,
): { readonly amount: number; readonly found: Attempt } | null {
  for (const share of SHARES_OF_THE_MOST) {
    const high = most * share;
    const enough = attempt(misfit, change(high));
    if (enough === null || !enough.fits) continue;
    const root = findRoot({
      f: (amount) => (attempt(misfit, change(amount))?.overrun ?? 1) - EXACTLY_MET,
      low: 0,
      high,
      tolerance: high * ROOT_TOLERANCE,
    });
    const amount = root.ok ? Math.min(high, root.x * PAST_THE_ROOT) : high;
    const found = attempt(misfit, change(amount));
    return found?.fits === true ? { amount, found } : { amount: high, found: enough };
  }
  return null;
}

function way(kind: WayOutKind, figure: number, distance: number, found: Attempt, times = 1): WayOut {
  return { kind, figure, distance, times, recipe: found.recipe, ledger: found.ledger };
}

function lessVolume(misfit: Misfit): WayOut | null {
  const { intoFermenter } = misfit;
  const cut = smallest(misfit, intoFermenter * 0.85, (less) => ({ intoFermenter: intoFermenter - less }));
  if (cut === null) return null;
  return way("less volume", intoFermenter - cut.amount, (WEIGHT.volume * cut.amount) / intoFermenter, cut.found);
}

function moreVolume(misfit: Misfit): WayOut | null {
  const { intoFermenter, equipment } = misfit;
  const room = equipment.fermenter.capacity - equipment.fermenter.headspace - intoFermenter;
  if (!misfit.reasons.some((limit) => limit.id === "element covered") || room <= 0) return null;
  const grown = smallest(misfit, room, (more) => ({ intoFermenter: intoFermenter + more }));
  if (grown === null) return null;
  return way("more volume", intoFermenter + grown.amount, (WEIGHT.volume * grown.amount) / intoFermenter, grown.found);
}

function waterAfterTheBoil(misfit: Misfit): WayOut | null {
  const { intoFermenter } = misfit;
  const added = smallest(misfit, intoFermenter * 0.5, (topUp) => ({ topUp }));
  if (added === null) return null;
  return way("water after the boil", added.amount, (WEIGHT.topUp * added.amount) / intoFermenter, added.found);
}

function maltExtract(misfit: Misfit): WayOut | null {
  const replaced = smallest(misfit, 1, (share) => ({ intention: withMaltExtract(misfit.intention, fraction(share)) }));
  if (replaced === null) return null;
  return way(
    "malt extract for part of the grist",
    replaced.amount,
    WEIGHT.maltExtract * replaced.amount,
    replaced.found,
  );
}

function thickerMash(misfit: Misfit): WayOut | null {
  const { intention, equipment } = misfit;
  const from = intention.thickness;
  if (from === null || equipment.lauter.method === "none" || from <= equipment.mash.thickest) return null;
  const thicker = smallest(misfit, from - equipment.mash.thickest, (less) => ({
    intention: { ...intention, thickness: litresPerKilogram(from - less) },
  }));
  if (thicker === null) return null;
  return way("thicker mash", from - thicker.amount, (WEIGHT.thickness * thicker.amount) / from, thicker.found);
}

function thinnerMash(misfit: Misfit): WayOut | null {
  const { intention, equipment } = misfit;
  const from = intention.thickness;
  if (from === null || equipment.lauter.method === "none" || from >= THINNEST_L_PER_KG) return null;
  const thinner = smallest(misfit, THINNEST_L_PER_KG - from, (more) => ({
    intention: { ...intention, thickness: litresPerKilogram(from + more) },
  }));
  if (thinner === null) return null;
  return way("thinner mash", from + thinner.amount, (WEIGHT.thickness * thinner.amount) / from, thinner.found);
}

/** Only the first rest, for a tun that cannot be heated to the others. */
function fewerRests(misfit: Misfit): WayOut | null {
  const { intention } = misfit;
  const dropped = intention.mash.length - 1;
  if (dropped < 1 || !misfit.reasons.some((limit) => limit.id === "mash steps")) return null;
  const found = attempt(misfit, { intention: { ...intention, mash: intention.mash.slice(0, 1) } });
  return found?.fits === true ? way("fewer rests", 1, WEIGHT.droppedRest * dropped, found) : null;
}

function twoMashes(misfit: Misfit): WayOut | null {
  const found = attempt(misfit, { intention: { ...misfit.intention, mashes: 2 } });
  return found?.fits === true ? way("two mashes", 2, WEIGHT.secondMash, found) : null;
}

function longerBoil(misfit: Misfit): WayOut | null {
  const { intention } = misfit;
  const room = LONGEST_BOIL_MIN - intention.boil;
  if (room <= 0) return null;
  const longer = smallest(misfit, room, (more) => ({
    intention: { ...intention, boil: minutes(intention.boil + more) },
  }));
  if (longer === null) return null;
  return way("longer boil", intention.boil + longer.amount, (WEIGHT.boilHour * longer.amount) / 60, longer.found);
}

function splitBatch(misfit: Misfit): WayOut | null {
  for (let brews = 2; brews <= MOST_BREWS; brews++) {
    const found = attempt(misfit, { intoFermenter: misfit.intoFermenter / brews });
    if (found?.fits === true) {
      return way("split batch", brews, WEIGHT.secondBrew * (brews - 1), found, brews);
    }
  }
  return null;
}
