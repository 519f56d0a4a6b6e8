import {
  BETA_RANGE,
  BINOMIAL_RANGE,
  binomialUpperTail,
  CHI_SQUARED_QUANTILE_RANGE,
  CHI_SQUARED_RANGE,
  chiSquaredQuantile,
  chiSquaredUpperTail,
  F_RANGE,
  fUpperTail,
  NORMAL_DEVIATE_RANGE,
  NORMAL_PROBABILITY_RANGE,
  normalCdf,
  normalQuantile,
  regularisedIncompleteBeta,
  STUDENT_T_RANGE,
  studentTQuantile,
  studentTUpperTail,
  T_QUANTILE_RANGE,
} from "../../statistics";
import type { FunctionRecord } from "./function-record";

/** How the distributions of chance are explained. */
export const STATISTICS_TAIL_FUNCTIONS: readonly FunctionRecord[] = [
  {
    id: "statistics/normalCdf",
    words:
      "How probable it is that a normal deviate stays below a value, counted in standard deviations from the mean. It is taken from chi-squared with one degree of freedom, of which half lies on each side, so a far lower tail keeps its digits.",
    equation: "Φ(z) = ½ Q(½, z²/2) for z < 0, 1 − that for z > 0",
    inputs: [{ at: "0", label: "Deviate, in standard deviations", ...NORMAL_DEVIATE_RANGE }],
    gives: "probability below, 0 to 1",
    sources: ["abramowitz-stegun-1964"],
    validRange: "−1e6 to 1e6; below −38 the probability comes out as 0.",
    call: normalCdf,
    example: [1.96],
  },
  {
    id: "statistics/normalQuantile",
    words:
      "The value that a normal deviate stays below with a probability, in standard deviations. A rational guess, then three of Halley's steps on the distribution itself.",
    equation: "Φ(z) = p",
    inputs: [{ at: "0", label: "Probability below", ...NORMAL_PROBABILITY_RANGE }],
    gives: "deviate, in standard deviations",
    sources: ["abramowitz-stegun-1964"],
    validRange: "1e-300 to the last number below 1.",
    call: normalQuantile,
    example: [0.9],
  },
  {
    id: "statistics/studentTUpperTail",
    words:
      "How probable a deviation is that is counted in its own estimated standard error: Student's t, for one side. With few degrees of freedom its tails are far longer than the normal ones.",
    equation: "½ I(ν / (ν + t²); ν/2, ½) for t > 0",
    inputs: [
      { at: "0.t", label: "Deviation over its standard error", ...STUDENT_T_RANGE.t },
      { at: "0.df", label: "Degrees of freedom", ...STUDENT_T_RANGE.df },
    ],
    gives: "probability above, 0 to 1",
    sources: ["abramowitz-stegun-1964"],
    validRange: "Degrees of freedom from 0.5 to a million, not necessarily whole.",
    call: studentTUpperTail,
    example: [{ t: 2.228, df: 10 }],
  },
  {
    id: "statistics/studentTQuantile",
    words:
      "The value that Student's t stays below with a probability: by how many standard errors an interval reaches to each side. The tail is solved on a scale of logarithms, so that rare tails are met as closely as common ones.",
    equation: "upper tail of t = 1 − p",
    inputs: [
      { at: "0.p", label: "Probability below", ...T_QUANTILE_RANGE.p },
      { at: "0.df", label: "Degrees of freedom", ...T_QUANTILE_RANGE.df },
    ],
    gives: "quantile, in standard errors",
    sources: ["abramowitz-stegun-1964"],
    validRange: "Probabilities from 1e-12 to 1 − 1e-12, degrees of freedom from 1 to a million.",
    call: studentTQuantile,
    example: [{ p: 0.9, df: 9 }],
  },
  {
    id: "statistics/chiSquaredUpperTail",
    words:
      "How probable a sum of squares of normal deviates at least this large is by chance: whether balances that do not close, or ranks that agree, need another reason. A series left of the bend, a continued fraction right of it.",
    equation: "Q(ν/2, χ²/2), the incomplete gamma function",
    inputs: [
      { at: "0.chiSquared", label: "Sum of squares", ...CHI_SQUARED_RANGE.chiSquared },
      { at: "0.df", label: "Degrees of freedom", ...CHI_SQUARED_RANGE.df },
    ],
    gives: "probability above, 0 to 1",
    sources: ["abramowitz-stegun-1964"],
    validRange: "Whole degrees of freedom from 1 to 10 000, sums up to a million.",
    call: chiSquaredUpperTail,
    example: [{ chiSquared: 9.488, df: 4 }],
  },
  {
    id: "statistics/chiSquaredQuantile",
    words:
      "The sum of squares that chance stays below with a probability: the limit that a check of balances is held to.",
    equation: "Q(ν/2, χ²/2) = 1 − p",
    inputs: [
      { at: "0.p", label: "Probability below", ...CHI_SQUARED_QUANTILE_RANGE },
      { at: "0.df", label: "Degrees of freedom", ...CHI_SQUARED_RANGE.df },
    ],
    gives: "quantile",
    sources: ["abramowitz-stegun-1964"],
    validRange: "Probabilities from 1e-6 to 1 − 1e-12, whole degrees of freedom from 1 to 10 000.",
    call: chiSquaredQuantile,
    example: [{ p: 0.95, df: 4 }],
  },
  {
    id: "statistics/fUpperTail",
    words:
      "How probable a ratio of two mean squares at least this large is by chance: whether groups differ by more than their own scatter explains.",
    equation: "I(ν₂ / (ν₂ + ν₁ F); ν₂/2, ν₁/2)",
    inputs: [
      { at: "0.f", label: "Ratio of mean squares", ...F_RANGE.f },
      { at: "0.df1", label: "Degrees of freedom above", ...F_RANGE.df },
      { at: "0.df2", label: "Degrees of freedom below", ...F_RANGE.df },
    ],
    gives: "probability above, 0 to 1",
    sources: ["abramowitz-stegun-1964"],
    validRange: "Degrees of freedom from 0.1 to a million, not necessarily whole.",
    call: fUpperTail,
    example: [{ f: 3.478, df1: 4, df2: 10 }],
  },
  {
    id: "statistics/regularisedIncompleteBeta",
    words:
      "The share of a beta distribution below a value, on which the tails of the binomial, of F and of Student's t rest. A continued fraction, mirrored where that converges faster; the factor before it is taken about its peak, so that large shapes keep their digits.",
    equation: "I(x; a, b) = ∫₀ˣ t^(a−1) (1 − t)^(b−1) dt / B(a, b)",
    inputs: [
      { at: "0.x", label: "Upper end", ...BETA_RANGE.x },
      { at: "0.a", label: "First shape", ...BETA_RANGE.shape },
      { at: "0.b", label: "Second shape", ...BETA_RANGE.shape },
    ],
    gives: "share below, 0 to 1",
    sources: ["abramowitz-stegun-1964"],
    validRange: "Shapes from 0.05 to a million.",
    call: regularisedIncompleteBeta,
    example: [{ x: 0.5, a: 2, b: 3 }],
  },
  {
    id: "statistics/binomialUpperTail",
    words:
      "How probable it is that at least so many of n independent trials succeed: how often a panel that guesses would do as well. Exact, without the normal curve that tables for large panels use.",
    equation: "Σ from k to n of C(n, i) pⁱ (1 − p)ⁿ⁻ⁱ = I(p; k, n − k + 1)",
    inputs: [
      { at: "0.n", label: "Trials", ...BINOMIAL_RANGE.n },
      { at: "0.atLeast", label: "Fewest successes that count", ...BINOMIAL_RANGE.atLeast },
      { at: "0.p", label: "Probability of one success", ...BINOMIAL_RANGE.p },
    ],
    gives: "probability, 0 to 1",
    sources: ["abramowitz-stegun-1964"],
    validRange: "Whole numbers, up to a million trials.",
    call: binomialUpperTail,
    example: [{ n: 10, atLeast: 7, p: 0.25 }],
  },
];
