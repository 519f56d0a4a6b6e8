import { BREWS_RANGE, compareBrews, compareTwoBrews, CURVE_RANGE, partitionBrews, thinCurve } from "../../compare";
import { SAMPLE_VALUE_RANGE } from "../../statistics";
import type { FunctionRecord } from "./function-record";

const BREWS = [
  { id: "a", planned: 12, measured: 12.4, sd: 0.25, group: "basket" },
  { id: "b", planned: 12, measured: 11.2, sd: 0.25, group: "bag" },
  { id: "c", planned: 12.1, measured: 11.7, sd: 0.3, group: "bag" },
  { id: "d", planned: 11.9, measured: 12.1, sd: 0.25, group: "basket" },
];

const FIRST = [
  { quantity: "fermenter.originalExtract", planned: 12, measured: 12.4, sd: 0.25 },
  { quantity: "fermenter.volume", planned: 20, measured: 19.2, sd: 0.3 },
];
const SECOND = [
  { quantity: "fermenter.originalExtract", planned: 12, measured: 11.2, sd: 0.25 },
  { quantity: "fermenter.volume", planned: 45, measured: 44.8, sd: 0.5 },
];

const OBSERVATIONS = [
  { value: 12.4, brewer: "a", equipment: "basket", revision: "1" },
  { value: 12.1, brewer: "a", equipment: "bag", revision: "2" },
  { value: 11.2, brewer: "b", equipment: "bag", revision: "1" },
  { value: 11.6, brewer: "b", equipment: "basket", revision: "2" },
  { value: 12.9, brewer: "c", equipment: "basket", revision: "1" },
  { value: 12.2, brewer: "c", equipment: "bag", revision: "2" },
  { value: 11.9, brewer: "c", equipment: "bag", revision: "1" },
];

/** How the functions that hold brews against each other are explained. */
export const COMPARE_BREWS_FUNCTIONS: readonly FunctionRecord[] = [
  {
    id: "compare/compareBrews",
    words:
      "One number across brews: their mean with the interval that so few leave, whether they differ by more than their readings are unsure, how far the brews themselves differ, and which lies too far out. The test of the differences goes by the stated uncertainty of the readings, so one that is stated too small makes chance look like a difference. With two brews only a spread of more than seven times that uncertainty would show four times of five.",
    equation: "Q = Σ (x − x̄)² / σ² held against χ² on n − 1; mean ± t · s / √n",
    inputs: [
      { at: "0.brews.0.planned", label: "Planned, one brew", ...BREWS_RANGE.value },
      { at: "0.brews.0.measured", label: "Measured, the same brew", ...BREWS_RANGE.value },
      { at: "0.brews.0.sd", label: "Standard uncertainty of the reading", ...BREWS_RANGE.sd },
    ],
    gives:
      "results with 80 % intervals, mean, spread, the test of chance, groups and outliers, in the unit of the values",
    sources: ["dersimonian-laird-1986", "gelman-2013", "student-1908", "nist-ehandbook", "iglewicz-hoaglin-1993"],
    validRange: "1 to 2000 brews; the spread between brews for 3 to 500.",
    call: compareBrews,
    example: [{ brews: BREWS, as: "measured" }],
  },
  {
    id: "compare/compareTwoBrews",
    words:
      "Two brews number by number: what was measured differs by so much, the plans by so much, and what is left is held against the uncertainty of both readings. Of a dozen numbers one is often far out by chance, so each probability is raised by how many are looked at. It says that the brews differ, not why.",
    equation: "d = (a − b) − (planned a − planned b); p = 2 Φ(−|d| / √(σa² + σb²)), the smallest of m times m",
    inputs: [
      { at: "0.first.0.measured", label: "Measured, first brew", ...BREWS_RANGE.value },
      { at: "0.second.0.measured", label: "Measured, second brew", ...BREWS_RANGE.value },
      { at: "0.first.0.sd", label: "Standard uncertainty, first brew", ...BREWS_RANGE.sd },
    ],
    gives: "for each number the differences, what the plans do not explain with its 80 % interval, and the probability",
    sources: ["holm-1979"],
    validRange: "Values up to 1e9 in size; the readings' errors taken as normal.",
    call: compareTwoBrews,
    example: [{ first: FIRST, second: SECOND }],
  },
  {
    id: "compare/partitionBrews",
    words:
      "How much of the variance among brews goes with the brewer, with the kettle, with the revision, and with neither. Where two of them always change together no numbers can tell them apart: one is given up and named. With a handful of brewers the shares are rough, which their intervals show.",
    equation: "x = mean + brewer + kettle + revision + rest, each with a variance of its own",
    inputs: [
      { at: "0.observations.0.value", label: "Result of one brew", ...SAMPLE_VALUE_RANGE },
      { at: "0.observations.1.value", label: "Result of another", ...SAMPLE_VALUE_RANGE },
    ],
    gives: "variances, shares and 80 % intervals, and what could not be told apart",
    sources: ["searle-1992"],
    validRange: "3 to 2000 brews and up to 200 brewers, kettles and revisions together.",
    call: partitionBrews,
    example: [{ observations: OBSERVATIONS }],
  },
  {
    id: "compare/thinCurve",
    words:
      "A curve of many readings as a small picture shows it: the first and the last stay, and of every span between the reading that stands furthest off its neighbours. Every point that is left was read, and a peak is not smoothed away; a short one beside a larger may be left out.",
    equation: "of each span the point of the largest triangle with the last kept and the mean of the next span",
    inputs: [
      { at: "0.points.1.1", label: "A value of the curve", ...CURVE_RANGE.coordinate },
      { at: "0.most", label: "Points kept at most", ...CURVE_RANGE.most },
    ],
    gives: "points of the curve, no more than asked for",
    sources: ["steinarsson-2013"],
    validRange: "Up to 1 000 000 points, and from 3 kept ones on.",
    call: thinCurve,
    example: [
      {
        points: [
          [0, 20],
          [60, 35],
          [120, 66],
          [180, 66.4],
          [240, 65.9],
        ],
        most: 4,
      },
    ],
  },
];
