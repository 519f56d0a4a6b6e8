import {
  changePoint,
  changesByOrder,
  describe,
  GRUBBS_RANGE,
  grubbs,
  leastSquaresLine,
  medianAbsoluteDeviation,
  modifiedZ,
  oneWayAnova,
  pairedDifference,
  partialPooling,
  POOLING_RANGE,
  randomEffects,
  SAMPLE_VALUE_RANGE,
  variancePartition,
} from "../../statistics";
import type { FunctionInput, FunctionRecord } from "./function-record";

const value = (at: string, label = "Value"): FunctionInput => ({ at, label, ...SAMPLE_VALUE_RANGE });

/** Boil-off of five brews, L/h; the last was with the lid off. */
const BOIL_OFFS = [3.1, 3.3, 3.2, 3.4, 4.6];

/** Efficiencies of four kettles with their standard errors. */
const KETTLES = [
  { estimate: 0.72, standardError: 0.02 },
  { estimate: 0.78, standardError: 0.03 },
  { estimate: 0.69, standardError: 0.04 },
  { estimate: 0.75, standardError: 0.02 },
];
const unit = (place: string): readonly FunctionInput[] => [
  { at: `${place}.0.estimate`, label: "Estimate of a unit", ...POOLING_RANGE.estimate },
  { at: `${place}.0.standardError`, label: "Its standard error", ...POOLING_RANGE.standardError },
];

/** Final extracts of one recipe, °P: three brewers on two kettles. */
const BREWS = [
  { value: 2.9, brewer: "a", equipment: "pot", revision: "1" },
  { value: 3.3, brewer: "a", equipment: "tower", revision: "2" },
  { value: 2.7, brewer: "b", equipment: "pot", revision: "2" },
  { value: 3.0, brewer: "b", equipment: "tower", revision: "1" },
  { value: 3.2, brewer: "c", equipment: "pot", revision: "1" },
  { value: 3.6, brewer: "c", equipment: "tower", revision: "2" },
  { value: 3.1, brewer: "c", equipment: "pot", revision: "2" },
  { value: 2.8, brewer: "a", equipment: "pot", revision: "2" },
];

/** How the statistics of brews are explained. */
export const STATISTICS_FUNCTIONS: readonly FunctionRecord[] = [
  {
    id: "statistics/describe",
    words:
      "Mean, scatter and quartiles of a sample. The scatter is summed about the mean with the lost digits kept, so that values which share seven leading digits still show theirs. Quartiles lie on straight lines between sorted values; other definitions differ by up to half a gap.",
    equation: "mean = Σ x / n; sd = √(Σ (x − mean)² / (n − 1))",
    inputs: [value("0.0")],
    gives: "number, mean, sd, least, quartiles and largest, in the unit of the values",
    sources: ["chan-1983", "hyndman-fan-1996", "nist-strd"],
    validRange: "2 to 100 000 values.",
    call: describe,
    example: [BOIL_OFFS],
  },
  {
    id: "statistics/leastSquaresLine",
    words:
      "The straight line from which the squared vertical distances of the points are least, with standard errors. All scatter is taken to be in y; where x is as uncertain, the slope comes out too flat. Held to the certified digits of NIST's reference data.",
    equation: "slope = Σ (x − x̄)(y − ȳ) / Σ (x − x̄)²; intercept = ȳ − slope x̄",
    inputs: [value("0.0.0", "x of a point"), value("0.0.1", "y of a point")],
    gives: "intercept and slope with their errors, residual sd, share of the scatter explained",
    sources: ["chan-1983", "nist-strd"],
    validRange: "From three points on, not all above one another.",
    call: leastSquaresLine,
    example: [
      [
        [0, 1],
        [1, 3],
        [2, 4],
      ],
    ],
  },
  {
    id: "statistics/oneWayAnova",
    words:
      "Whether groups differ by more than their own scatter explains. The squares between and within the groups are measured from the first value, so that leading digits which all share cost nothing. It assumes equal, normal scatter in every group, and does not say which groups differ.",
    equation: "F = (Σ n (group mean − mean)² / (k − 1)) / (Σ (x − group mean)² / (N − k))",
    inputs: [value("0.0.0")],
    gives: "F, degrees of freedom, sums of squares, share between groups, residual sd and probability",
    sources: ["chan-1983", "nist-strd"],
    validRange: "From two groups on, some scatter within.",
    call: oneWayAnova,
    example: [
      [
        [1, 2, 3],
        [2, 3, 4],
      ],
    ],
  },
  {
    id: "statistics/pairedDifference",
    words:
      "Whether two measurements of the same things differ: planned and measured, two hydrometers, one beer twice. Student's t of the differences, which leaves out how much the things differ from one another. It assumes normal differences.",
    equation: "t = d̄ / (s / √n) on n − 1 degrees of freedom, d = a − b",
    inputs: [value("0.a.0", "First measurement of a thing"), value("0.b.0", "Second measurement of it")],
    gives: "mean difference with 80 and 95 % intervals, t and probability; or that all differ by the same",
    sources: ["student-1908"],
    validRange: "From two pairs on.",
    call: pairedDifference,
    example: [{ a: [5, 7, 6], b: [4, 5, 5] }],
  },
  {
    id: "statistics/partialPooling",
    words:
      "Estimates of like units drawn towards their common mean, each as far as its own error and the spread of all suggest: how a kettle's first brew starts from what the club knows. A normal model with a flat prior on the mean and on the sd between units, integrated numerically, so that the uncertainty of that sd is in every interval. Fewer than three units cannot tell it.",
    equation:
      "θ | y ~ ∫ N(μ̂ + B (y − μ̂), B σ² + (1 − B)² V) p(τ | y) dτ, B = τ² / (σ² + τ²); p(τ | y) ∝ √V Π (σ² + τ²)^(−½) exp(−(y − μ̂)² / 2 (σ² + τ²))",
    inputs: unit("0"),
    gives: "mean, sd between units (posterior median) and each unit with 80 % intervals, in the unit of the estimates",
    sources: ["gelman-2013"],
    validRange: "3 to 500 units; the sd of the mean depends on the end of the prior for three and four.",
    call: partialPooling,
    example: [KETTLES],
  },
  {
    id: "statistics/changePoint",
    words:
      "The place in a sequence from which on its mean is another, and how probable one as clear is, at any place, when nothing changes. Of all places the one with the largest difference of means over its standard error is taken, which is the test of the likelihood ratio; the probability is found exactly, by one integral after the other. Errors must be known and independent; a slow drift shows as one step in its middle.",
    equation: "max over k of |x̄ behind − x̄ before| / √(1/W before + 1/W behind), W = Σ 1/s²",
    inputs: unit("0"),
    gives: "the likeliest place, both means, the difference over its error, and the probability",
    sources: ["hawkins-1977"],
    validRange: "2 to 400 values.",
    call: changePoint,
    example: [KETTLES],
  },
  {
    id: "statistics/changesByOrder",
    words:
      "How probable a step as clear as the clearest of each sequence is, at any place and in any of the sequences, when the order says nothing. All orders are tried, or 2000 of them; nothing is supposed of the errors, so wrong readings do not look like a change. Few values have few orders: with four no step is rarer than one in twelve.",
    equation: "p = orders in which max over sequences and places of |x̄ behind − x̄ before| / s is as large / all orders",
    inputs: unit("0.0"),
    gives: "a probability for each sequence, for all sequences and places together",
    sources: ["antoch-huskova-2001", "westfall-young-1993"],
    validRange: "Up to 40 sequences of 2 to 400 values.",
    call: changesByOrder,
    example: [[KETTLES]],
  },
  {
    id: "statistics/randomEffects",
    words:
      "The mean of like units and the variance between them as one best value each, by DerSimonian and Laird's moments or by restricted likelihood. Either may say 0 for few units, and then all are taken as equal; partialPooling does not pick one value and is used for the kettles.",
    equation: "moments: max(0, (Q − (k − 1)) / (Σ w − Σ w² / Σ w)); likelihood: Σ w² d² = Σ w − Σ w² / Σ w",
    inputs: unit("0.units"),
    gives: "mean and its error, variance between units, Q with its probability",
    sources: ["dersimonian-laird-1986", "viechtbauer-2005"],
    validRange: "2 to 500 units.",
    call: randomEffects,
    example: [{ units: KETTLES, method: "reml" }],
  },
  {
    id: "statistics/variancePartition",
    words:
      "Which share of the variance of one recipe's brews lies between brewers, between kettles, between revisions and in the rest. Random effects without interaction, by restricted likelihood; shares may be 0, and with few brewers the intervals are wide. Where brewers always use their own kettle no data can tell the two apart, and it says so.",
    equation: "y = μ + brewer + equipment + revision + rest; max of −½ (ln |V| + ln |1ᵀV⁻¹1| + yᵀP y)",
    inputs: [value("0.observations.0.value", "Result of a brew")],
    gives: "mean, variance and share of each with error and 80 % interval; or what cannot be told apart",
    sources: ["searle-1992"],
    validRange: "3 to 2000 brews, up to 200 brewers, kettles and revisions together.",
    call: variancePartition,
    example: [{ observations: BREWS }],
  },
  {
    id: "statistics/grubbs",
    words:
      "Whether the farthest value of a sample lies too far out to belong to it. Grubbs' test, for one stray value in a normal sample; two strays on one side hide each other, which modifiedZ does not mind. A stray value is a reason to look at the brew, not to drop it.",
    equation: "G = max |x − x̄| / s against (n − 1)/√n · √(t² / (n − 2 + t²)), t of α/n, or α/2n for both sides",
    inputs: [
      value("0.values.0"),
      { at: "0.alpha", label: "Share of sound samples called stray", ...GRUBBS_RANGE.alpha },
    ],
    gives: "statistic, limit, whether it is passed, place and size of the value; or that there is no scatter",
    sources: ["nist-ehandbook"],
    validRange: "3 to 10 000 values, alpha 1e-6 to 0.5.",
    call: grubbs,
    example: [{ values: BOIL_OFFS, alpha: 0.05 }],
  },
  {
    id: "statistics/medianAbsoluteDeviation",
    words:
      "Middle and scatter of a sample that stray values hardly move: the median, and the median distance from it. Times 1.4826 it is the sd of a normal sample. It uses the values less fully than the sd, so it is rougher when there is no stray.",
    equation: "sd = 1.4826 · median |x − median x|",
    inputs: [value("0.0")],
    gives: "median, median absolute deviation and sd, in the unit of the values",
    sources: ["iglewicz-hoaglin-1993"],
    validRange: "1 to 100 000 values.",
    call: medianAbsoluteDeviation,
    example: [BOIL_OFFS],
  },
  {
    id: "statistics/modifiedZ",
    words:
      "How far each value lies from the middle of its sample, in standard deviations that stray values hardly move. Beyond 3.5 a value is called stray, a convention of its authors. Where more than half of the values are the same there is no scale to measure by.",
    equation: "z = 0.6745 (x − median) / median absolute deviation",
    inputs: [value("0.0")],
    gives: "z of each value and the places of stray ones; or that there is no scatter",
    sources: ["iglewicz-hoaglin-1993"],
    validRange: "1 to 100 000 values.",
    call: modifiedZ,
    example: [BOIL_OFFS],
  },
];
