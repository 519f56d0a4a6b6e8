import {
  duoTrioMinimumCorrect,
  duoTrioProbability,
  requiredAssessors,
  triangleMinimumCorrect,
  triangleProbability,
  type ForcedChoice,
  type ForcedChoiceResult,
  type RequiredAssessors,
} from "@/lib/calc/judging";
import type { FlightFacts } from "./results-facts";

/** The usual risk of seeing a difference where there is none. */
export const ALPHA = 0.05;

/** What one would want to find: half of the drinkers can tell the beers apart; and with which risk it is missed. */
export const WANTED = { proportionOfDiscriminators: 0.5, alpha: ALPHA, beta: 0.1 } as const;

/** The result of a triangle or duo-trio. */
export interface DifferenceResult {
  readonly flight: FlightFacts;
  readonly test: ForcedChoice;
  readonly answers: number;
  readonly right: number;
  /** null where nobody answered. */
  readonly weighed: ForcedChoiceResult | null;
  /** Fewest right answers that reject guessing; null where so few answered that all of them right would not. */
  readonly minimumRight: number | null;
  readonly required: RequiredAssessors;
}

/** So few cannot reject guessing at 5 %, however right they are: (1/3)² and (1/2)⁴ are above it. */
const FEWEST = { triangle: 3, "duo-trio": 5 } as const;

export function differenceResult(flight: FlightFacts, test: ForcedChoice): DifferenceResult {
  const answers = flight.choices.length;
  const right = flight.choices.filter(({ isRight }) => isRight).length;
  const isTriangle = test === "triangle";
  const asked = { n: answers, correct: right };
  const weighed = isTriangle ? triangleProbability : duoTrioProbability;
  const minimum = isTriangle ? triangleMinimumCorrect : duoTrioMinimumCorrect;
  return {
    ...{ flight, test, answers, right },
    weighed: answers === 0 ? null : weighed(asked),
    minimumRight: answers < FEWEST[test] ? null : minimum({ n: answers, alpha: ALPHA }),
    required: requiredAssessors({ ...WANTED, test }),
  };
}
