import { BREW_FIGURES, followBrew, type BrewFigures, type FollowedBrew } from "./brew-figures";
import type { PlannedBrew } from "./planned-brew";

/** Readings that follow from the figures of a brew, each with the value that a brew gives it. */
const READ_OF = {
  "mash.firstWort": (brew) => brew.firstWortPlato,
  "kettle.preBoil": (brew) => brew.beforeBoil.litres,
  "kettle.preBoilGravity": (brew) => brew.beforeBoil.plato,
  "kettle.postBoil": (brew) => brew.endOfBoil.litres,
  "fermenter.volume": (brew) => brew.fermenter.litres,
  "fermenter.originalExtract": (brew) => brew.fermenter.plato,
  "fermenter.finalExtract": (brew) => brew.finalPlato,
  "package.volume": (brew) => brew.packagedL,
} as const satisfies Readonly<Record<string, (brew: FollowedBrew) => number>>;

/** All readings that tell where water and extract went; the mash water is figure and reading at once. */
export type FollowedReading = "water.mash" | keyof typeof READ_OF;

// The keys of a constant object are what they are; Object.keys only forgets them.
export const FOLLOWED_READINGS: readonly FollowedReading[] = [
  "water.mash",
  ...(Object.keys(READ_OF) as (keyof typeof READ_OF)[]),
];

/**
 * Gives what an exact instrument would have read in a brew.
 *
 * @returns The value in the ledger's unit.
 */
export function readingIn(brew: FollowedBrew, figures: BrewFigures, id: FollowedReading): number {
  return id === "water.mash" ? figures["water.mash"] : READ_OF[id](brew);
}

/**
 * Finds how numbers of a brew change with each of its figures, by central differences.
 *
 * @returns For each number its slopes, in the order of `BREW_FIGURES`.
 */
export function slopesOf(
  plan: PlannedBrew,
  at: BrewFigures,
  of: (brew: FollowedBrew, figures: BrewFigures) => readonly number[],
): number[][] {
  const columns = BREW_FIGURES.map((id) => {
    const step = 1e-4 * Math.max(1, Math.abs(at[id]));
    const moved = (by: number): readonly number[] => {
      const figures = { ...at, [id]: at[id] + by };
      return of(followBrew(plan, figures), figures);
    };
    const down = moved(-step);
    return moved(step).map((up, i) => (up - (down[i] ?? 0)) / (2 * step));
  });
  return (columns[0] ?? []).map((_, i) => columns.map((column) => column[i] ?? 0));
}
