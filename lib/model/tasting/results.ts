import { differenceResult, type DifferenceResult } from "./results-difference";
import type { TastingFacts } from "./results-facts";
import { followedFigures, type FollowedFigure } from "./results-followed";
import { scoredResult, type ScoredResult } from "./results-scored";

/** What a revealed tasting comes to. */
export interface TastingResults {
  readonly facts: TastingFacts;
  readonly scored: readonly ScoredResult[];
  readonly differences: readonly DifferenceResult[];
  readonly followed: readonly FollowedFigure[];
}

export function tastingResults(facts: TastingFacts): TastingResults {
  const { flights, seed } = facts;
  const scored = flights.filter(({ kind, entries }) => kind === "scored" && entries.length > 0);
  return {
    facts,
    scored: scored.map((flight) => scoredResult(flight, seed)),
    differences: flights.flatMap((flight) => (flight.kind === "scored" ? [] : [differenceResult(flight, flight.kind)])),
    followed: followedFigures(scored),
  };
}
