import { brew, type Ambient, type Equipment, type Ledger, type Limit, type Recipe } from "../ledger";
import { findRoot } from "../numerics";
import { litres, type Litres } from "../units";
import type { Intention, WayOut, WayOutKind } from "./intention";
import { solveAmounts } from "./solve-amounts";

/** What a change costs against the intention, for the ranking: docs/decisions/0004-ways-out.md. */
export const WEIGHT = {
  volume: 1,
  topUp: 0.3,
  maltExtract: 0.6,
  sugar: 0.9,
  thickness: 0.1,
  droppedRest: 0.15,
  gentlerSteps: 0.12,
  oneRestInstead: 0.18,
  secondMash: 0.35,
  boilHour: 0.2,
  secondBrew: 0.5,
} as const;

/** A limit that is met exactly counts as kept; half of the slack that the limits themselves allow. */
const EXACTLY_MET = 5e-10;
/** The root is passed by a hair, so that its rounding does not put the answer outside. */
const ROOT_TOLERANCE = 1e-4;
const PAST_THE_ROOT = 1 + 2 * ROOT_TOLERANCE;

/** A brew that breaks limits, and which. */
export interface Misfit {
  readonly intention: Intention;
  readonly equipment: Equipment;
  readonly ambient: Ambient;
  readonly intoFermenter: Litres;
  readonly reasons: readonly Limit[];
}

/**
 * Tells whether a limit speaks against the kettle; the carbonation is a matter of the container.
 *
 * @returns True for a limit that is not kept.
 */
export const isBroken = (limit: Limit): boolean => !limit.ok && limit.id !== "carbonation";

export interface Attempt {
  readonly recipe: Recipe;
  readonly ledger: Ledger;
  readonly fits: boolean;
  /** Worst overrun of any limit, relative. */
  readonly overrun: number;
}

export interface Change {
  readonly intention?: Intention;
  readonly intoFermenter?: number;
  readonly topUp?: number;
}

/** Tried from the most down: too much of a change may break a limit that the beginning of it keeps. */
const SHARES_OF_THE_MOST = [1, 0.8, 0.5, 0.2] as const;

/**
 * Solves and brews a change.
 *
 * @returns Recipe and ledger with how far they are from every limit; null where nothing can be brewed.
 */
export function attempt(misfit: Misfit, change: Change): Attempt | null {
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

/**
 * Finds the smallest amount of a change that keeps every limit.
 *
 * @returns The amount and what it gives; null when no amount up to the most does.
 */
export function smallest(
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

/**
 * Writes a change down as a way out.
 *
 * @returns The way out, with nothing else changed.
 */
export function way(kind: WayOutKind, figure: number, distance: number, found: Attempt, times = 1): WayOut {
  return { kind, also: null, figure, distance, times, recipe: found.recipe, ledger: found.ledger };
}
