import type { Ledger, Recipe } from "@/lib/calc/ledger";
import { findRoot } from "@/lib/calc/numerics";
import { compute, type Brewed } from "./compute";

/** One amount that is to be found. */
export interface Along {
  /** The brew that is now. */
  readonly brewed: Brewed;
  /** The recipe with the amount at `x`; null where there is none. */
  readonly at: (x: number) => Recipe | null;
  /** What is wanted of it. */
  readonly read: (ledger: Ledger) => number | null;
  readonly wanted: number;
  /** Places to look at, ascending; the answer lies between two of them. */
  readonly grid: readonly number[];
}

export type Found =
  | { readonly ok: true; readonly recipe: Recipe; readonly ledger: Ledger }
  /** null where no amount brews at all. */
  | { readonly ok: false; readonly reachable: { readonly low: number; readonly high: number } | null };

interface Point {
  readonly x: number;
  readonly value: number;
}

/** Of the distance between two places; far below what a balance shows. */
const TOLERANCE = 1e-10;

/**
 * Finds the amount that gives what is wanted, by brewing at each place and searching between the two it lies between.
 * What cannot be reached comes back with what can.
 */
export function solveAlong(a: Along): Found {
  const value = (x: number): number => {
    const recipe = a.at(x);
    const outcome = recipe === null ? null : brewAs(recipe, a.brewed);
    return (outcome === null ? null : a.read(outcome.ledger)) ?? NaN;
  };
  const points = a.grid.map((x): Point => ({ x, value: value(x) })).filter((point) => !Number.isNaN(point.value));
  const bracket = bracketOf(points, a.wanted);
  if (bracket === null) return { ok: false, reachable: reachOf(points) };
  const [from, to] = bracket;
  const root = findRoot({
    f: (x) => value(x) - a.wanted,
    low: from.x,
    high: to.x,
    tolerance: TOLERANCE * (to.x - from.x),
  });
  const recipe = root.ok ? a.at(root.x) : null;
  const brewed = recipe === null ? null : brewAs(recipe, a.brewed);
  return brewed === null ? { ok: false, reachable: reachOf(points) } : { ok: true, ...brewed };
}

/** The recipe on the same kettle on the same day; null where it does not brew. */
export function brewAs(recipe: Recipe, { equipment, ambient }: Brewed): Pick<Brewed, "recipe" | "ledger"> | null {
  const computed = compute(recipe, equipment, ambient);
  return computed.ok ? computed.brewed : null;
}

function bracketOf(points: readonly Point[], wanted: number): readonly [Point, Point] | null {
  for (const [i, to] of points.entries()) {
    const from = points[i - 1];
    if (from !== undefined && (from.value - wanted) * (to.value - wanted) <= 0) return [from, to];
  }
  return null;
}

function reachOf(points: readonly Point[]): { readonly low: number; readonly high: number } | null {
  const values = points.map((point) => point.value);
  return values.length === 0 ? null : { low: Math.min(...values), high: Math.max(...values) };
}

/** Places from one amount to another, each the same number of times the one before. */
export function timesGrid(low: number, high: number, count: number): readonly number[] {
  return Array.from({ length: count }, (_, i) => low * (high / low) ** (i / (count - 1)));
}
