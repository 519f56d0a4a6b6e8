import { adjustForJudge, friedman, intraclassCorrelation, kendallW, scoreSheetTotal } from "../../judging";
import { servingOrders, SHEET_MAXIMA, type ScoreSheet } from "../../judging";
import { CONFIDENCE_RANGE } from "../../judging/intraclass-correlation";
import { SCORE_RANGE } from "../../judging/score-table";
import { SEED_RANGE } from "../../judging/seeded-random";
import { SERVING_RANGE } from "../../judging/serving-orders";
import type { FunctionInput, FunctionRecord } from "./function-record";

/** Scores of four judges, the rows, for six beers. */
const PANEL = [
  [32, 28, 37, 30, 41, 29],
  [28, 25, 33, 31, 36, 24],
  [35, 31, 36, 29, 39, 33],
  [30, 29, 38, 28, 40, 27],
];

/** The same panel where nobody tasted all. */
const SHARED_OUT = [
  [32, 28, null, 30, 41, null],
  [28, null, 33, 31, null, 24],
  [null, 31, 36, null, 39, 33],
  [30, 29, 38, null, null, 27],
];

const score = (at: string): FunctionInput => ({ at, label: "Score of a judge for an entry", ...SCORE_RANGE });
const seed: FunctionInput = { at: "0.seed", label: "Seed of chance", ...SEED_RANGE };
const FULL_TABLE = "2 to 1000 judges and 2 to 1000 entries, every judge having scored every entry.";

const part = (name: keyof ScoreSheet, label: string): FunctionInput => ({
  at: `0.${name}`,
  label,
  unit: "points",
  min: 0,
  max: SHEET_MAXIMA[name],
});

/** How the functions of a panel of judges are explained. */
export const JUDGING_FUNCTIONS: readonly FunctionRecord[] = [
  {
    id: "judging/kendallW",
    words:
      "How far judges put the entries in the same order: Kendall's coefficient of concordance, from 0 to 1. Each judge's scores become ranks, equal scores share the mean of theirs, and the sums of ranks are compared with those of full agreement. A severe judge and a mild one may agree fully. The probability comes from chi-squared, which is rough for fewer than about seven entries.",
    equation:
      "W = 12 S / (m² (n³ − n) − m Σ(t³ − t)), S the squares of the rank sums about their mean; χ² = m (n − 1) W on n − 1 degrees of freedom",
    inputs: [score("0.0.0")],
    gives: "W, chi-squared, degrees of freedom and probability; or that no judge told the entries apart",
    sources: ["kendall-1939"],
    validRange: FULL_TABLE,
    call: kendallW,
    example: [PANEL],
  },
  {
    id: "judging/friedman",
    words:
      "Whether the entries differ at all, when every judge scored every one: Friedman's test on the ranks within each judge. It is W of kendallW read as a test, corrected for ties. The probability comes from chi-squared and is rough for a small panel.",
    equation: "χ² = m (n − 1) W on n − 1 degrees of freedom, m judges and n entries",
    inputs: [score("0.0.0")],
    gives: "chi-squared, degrees of freedom and probability; or that no judge told the entries apart",
    sources: ["kendall-1939"],
    validRange: FULL_TABLE,
    call: friedman,
    example: [PANEL],
  },
  {
    id: "judging/intraclassCorrelation",
    words:
      "How much of the scatter of scores is differences between entries, in six forms. Form 1 is for entries that each had judges of their own, 2 for judges who stand for others like them, 3 for these judges only; with 1 for a single judge's score or k for the mean of the panel. Forms 1 and 2 count a severe judge as disagreement, form 3 does not, so the same scores may give 0.3 and 0.9: say which form. The interval supposes scores that scatter normally.",
    equation:
      "(1,1) = (B − W) / (B + (k − 1) W); (2,1) = (B − E) / (B + (k − 1) E + k (J − E) / n); (3,1) = (B − E) / (B + (k − 1) E); k judges: k r / (1 + (k − 1) r); B, W, J, E the mean squares between entries, within them, between judges and left over",
    inputs: [score("0.scores.0.0"), { at: "0.confidence", label: "Confidence of the interval", ...CONFIDENCE_RANGE }],
    gives: "correlation, F test, interval and mean squares; or why there is none",
    sources: ["shrout-fleiss-1979", "mcgraw-wong-1996"],
    validRange: `${FULL_TABLE} Confidence 0.5 to 0.99.`,
    call: intraclassCorrelation,
    example: [{ scores: PANEL, form: "2,k", confidence: 0.95 }],
  },
  {
    id: "judging/adjustForJudge",
    words:
      "Scores corrected for the severity of the judges who happened to taste an entry. Each score is taken as entry plus judge plus scatter, and least squares finds both from whatever cells are filled, as long as judges link the entries. It gives each entry the score of the average judge with an 80 % interval, its chance of being the best, and each judge's severity and spread. It leaves out that a judge may use a wider scale or may have had the better beers of a style; consensus scores after talk at the table are no independent scores.",
    equation:
      "score = entry + judge + scatter, Σ judge = 0, squares of the scatter least; error of a mean = σ √(1/r + mean of the covariances of its judges); interval ± t(0.9) × error; chances counted in 6000 draws",
    inputs: [score("0.scores.0.0"), seed],
    gives:
      "per entry mean, error, interval and chance of being first; per judge severity and spread; or the groups that nothing links",
    sources: ["scheffe-1959"],
    validRange: "1 to 200 judges, 1 to 1000 entries; empty cells are null.",
    call: adjustForJudge,
    example: [{ scores: SHARED_OUT, seed: 1 }],
  },
  {
    id: "judging/servingOrders",
    words:
      "In which order each judge tastes the entries. When all taste all, rows of Williams squares put every entry equally often into each place and straight after each other one, given a multiple of n judges for an even number n of entries or of 2n for an odd one. With other numbers, more entries than a palate bears or entries that a judge must not get, tastings differ by one at most, as far as what is withheld lets them, and pairs, places and successions are as even as a search found; the balance says how even. It knows nothing of strength or roast: flights should hold beers of a kind.",
    equation:
      "row i, place j: (i + 0, 1, n − 1, 2, n − 2, …) modulo n, and backwards too for an odd n; entries and rows shuffled",
    inputs: [
      { at: "0.entries", label: "Entries", ...SERVING_RANGE.entries },
      { at: "0.judges", label: "Judges", ...SERVING_RANGE.judges },
      { at: "0.palateLimit", label: "Most entries that a judge tastes", ...SERVING_RANGE.palateLimit },
      seed,
    ],
    gives: "for each judge the entries in order, and how balanced the orders are",
    sources: ["williams-1949"],
    validRange: "1 to 100 entries, 1 to 100 judges, whole numbers; at least one entry is left to every judge.",
    call: servingOrders,
    example: [{ entries: 12, judges: 6, palateLimit: 6, seed: 1 }],
  },
  {
    id: "judging/scoreSheetTotal",
    words:
      "The points of a judge's sheet added up, 50 at most. Each part has a maximum of its own, and more than that is refused rather than cut. Half points are taken as they are.",
    equation: "total = aroma + appearance + flavour + mouthfeel + overall",
    inputs: [
      part("aroma", "Aroma"),
      part("appearance", "Appearance"),
      part("flavour", "Flavour"),
      part("mouthfeel", "Mouthfeel"),
      part("overall", "Overall impression"),
    ],
    gives: "points, 0 to 50",
    sources: ["bjcp-score-sheet"],
    validRange: "0 to 12, 3, 20, 5 and 10 points.",
    call: scoreSheetTotal,
    example: [{ aroma: 9, appearance: 3, flavour: 15, mouthfeel: 4, overall: 7 }],
  },
];
