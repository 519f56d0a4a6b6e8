import { duoTrioMinimumCorrect, duoTrioProbability, pairedPreferenceProbability } from "../../judging";
import { rankCorrelation, requiredAssessors, triangleMinimumCorrect, triangleProbability } from "../../judging";
import { ALPHA_RANGE, ASSESSORS_RANGE } from "../../judging/forced-choice";
import { PLANNING_RANGE } from "../../judging/required-assessors";
import { SCORE_RANGE } from "../../judging/score-table";
import type { FunctionInput, FunctionRecord } from "./function-record";

/** Assessors of an example, from the fewest that make sense with its other numbers. */
const assessors = (min: number): FunctionInput => ({ at: "0.n", label: "Assessors", ...ASSESSORS_RANGE, min });
const alpha: FunctionInput = { at: "0.alpha", label: "Risk of a difference where there is none", ...ALPHA_RANGE };
const answers = (at: string, label: string, max: number): FunctionInput => ({ at, label, unit: "", min: 0, max });

const ONCE = "Every assessor answers once and must choose; a second round of the same people is not a second sample.";
const LIMITS =
  "The limits are exact and hold the truth in at least 80 of 100 cases; the normal approximation of the standards is narrower.";

/** How the difference and preference tests are explained. */
export const JUDGING_TEST_FUNCTIONS: readonly FunctionRecord[] = [
  {
    id: "judging/triangleMinimumCorrect",
    words: `How many right answers of a triangle test reject guessing: three glasses, two alike, which is the odd one? It is the smallest number that guessing at one in three reaches no more often than the risk allows. ${ONCE}`,
    equation: "smallest x with Σ C(n, k) (1/3)^k (2/3)^(n−k) over k ≥ x at most alpha",
    inputs: [assessors(3), alpha],
    gives: "fewest right answers",
    sources: ["iso-4120-2021"],
    validRange: "Up to 10 000 assessors, enough of them for alpha: 3 for 0.05; alpha 0.000001 to 0.5.",
    call: triangleMinimumCorrect,
    example: [{ n: 24, alpha: 0.05 }],
  },
  {
    id: "judging/duoTrioMinimumCorrect",
    words: `How many right answers of a duo-trio test reject guessing: which of two glasses is the same as the first? It is the smallest number that guessing at one in two reaches no more often than the risk allows. ${ONCE}`,
    equation: "smallest x with Σ C(n, k) / 2^n over k ≥ x at most alpha",
    inputs: [assessors(5), alpha],
    gives: "fewest right answers",
    sources: ["iso-10399-2017"],
    validRange: "Up to 10 000 assessors, enough of them for alpha: 5 for 0.05; alpha 0.000001 to 0.5.",
    call: duoTrioMinimumCorrect,
    example: [{ n: 24, alpha: 0.05 }],
  },
  {
    id: "judging/triangleProbability",
    words: `How likely guessing alone gives as many right answers in a triangle test, and which share of assessors can tell the beers apart. Those who cannot are right one time in three, which is taken off. ${LIMITS}`,
    equation: "p = Σ C(n, k) (1/3)^k (2/3)^(n−k) over k ≥ right; share = 1.5 right / n − 0.5, at least 0",
    inputs: [assessors(7), answers("0.correct", "Right answers", 12)],
    gives: "probability, share right, share of discriminators and its limits",
    sources: ["iso-4120-2021", "clopper-pearson-1934"],
    validRange: "1 to 10 000 assessors.",
    call: triangleProbability,
    example: [{ n: 12, correct: 7 }],
  },
  {
    id: "judging/duoTrioProbability",
    words: `How likely guessing alone gives as many right answers in a duo-trio test, and which share of assessors can tell the beers apart. Those who cannot are right every second time, which is taken off. ${LIMITS}`,
    equation: "p = Σ C(n, k) / 2^n over k ≥ right; share = 2 right / n − 1, at least 0",
    inputs: [assessors(14), answers("0.correct", "Right answers", 20)],
    gives: "probability, share right, share of discriminators and its limits",
    sources: ["iso-10399-2017", "clopper-pearson-1934"],
    validRange: "1 to 10 000 assessors.",
    call: duoTrioProbability,
    example: [{ n: 20, correct: 14 }],
  },
  {
    id: "judging/pairedPreferenceProbability",
    words: `How likely a vote between two beers is at least as lopsided when nobody has a preference. Two-sided, because either might have won: one-sided tables give half of it. ${LIMITS}`,
    equation: "p = 2 Σ C(n, k) / 2^n over k ≥ the larger count, at most 1",
    inputs: [assessors(15), answers("0.preferring", "Who prefer the first beer", 20)],
    gives: "probability, share who prefer the first and its limits",
    sources: ["iso-5495-2005", "clopper-pearson-1934"],
    validRange: "1 to 10 000 assessors.",
    call: pairedPreferenceProbability,
    example: [{ n: 20, preferring: 15 }],
  },
  {
    id: "judging/requiredAssessors",
    words:
      "How many assessors a triangle or duo-trio test needs to find a difference that a stated share of them can tell. Exact: the smallest number at which both risks are kept. The power goes up and down as assessors are added, because right answers are whole numbers, so a few more may again be a little short. A small club often finds that it cannot show a small difference, nor that there is none.",
    equation:
      "smallest n with P(at least x right | share + (1 − share) × chance) ≥ 1 − beta, x the fewest right answers for alpha",
    inputs: [
      {
        at: "0.proportionOfDiscriminators",
        label: "Share who can tell the beers apart",
        ...PLANNING_RANGE.proportionOfDiscriminators,
      },
      { at: "0.alpha", label: "Risk of a difference where there is none", ...PLANNING_RANGE.risk },
      { at: "0.beta", label: "Risk of missing the difference", ...PLANNING_RANGE.risk },
    ],
    gives: "assessors, fewest right answers and the two risks; or that 10 000 would not do",
    sources: ["iso-4120-2021", "iso-10399-2017"],
    validRange: "Share 0.05 to 1, risks 0.001 to 0.5.",
    call: requiredAssessors,
    example: [{ proportionOfDiscriminators: 0.5, alpha: 0.05, beta: 0.05, test: "triangle" }],
  },
  {
    id: "judging/rankCorrelation",
    words:
      "How far two things rise together, whatever the scale of either: the correlation of their ranks. Up to eight pairs its probability is counted over all orders; beyond, Student's t approximates it. That two things go together does not say that one causes the other.",
    equation: "rho = Σ (r − m)(s − m) / √(Σ (r − m)² Σ (s − m)²), r and s the ranks, m = (n + 1)/2",
    inputs: [{ at: "0.a.0", label: "First value of the first pair", ...SCORE_RANGE }],
    gives: "correlation from −1 to 1 and its two-sided probability",
    sources: ["spearman-1904", "student-1908"],
    validRange: "3 to 1000 pairs.",
    call: rankCorrelation,
    example: [{ a: [38, 12, 24, 45, 30], b: [2.4, 0.8, 1.4, 2.6, 1.1] }],
  },
];
