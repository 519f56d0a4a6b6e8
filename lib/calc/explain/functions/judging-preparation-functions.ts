import { differenceOrders, styleDistance } from "../../judging";
import { ASSESSORS_RANGE } from "../../judging/forced-choice";
import { SEED_RANGE } from "../../judging/seeded-random";
import { STYLE_FIGURE_RANGE, STYLE_FIGURE_SD_RANGE } from "../../judging/style-distance";
import type { FunctionRecord } from "./function-record";

/** How what is decided before a tasting is explained. */
export const JUDGING_PREPARATION_FUNCTIONS: readonly FunctionRecord[] = [
  {
    id: "judging/styleDistance",
    words:
      "How far a beer is from the published numbers of a style, for choosing the style that it is judged as. Each known figure counts by how far outside the range it lies, in half-widths of that range, so that gravity and colour weigh alike; a figure that is known worse than the range is wide counts in its own uncertainty. Distance 0 means that every known figure is inside; among such styles the one whose middles are nearest comes first. It says nothing of taste: many styles share their numbers.",
    equation:
      "dᵢ = (distance outside the range) / max(half-width, sd); distance = √(mean dᵢ²); off centre = √(mean ((x − middle) / max(half-width, sd))²); chance inside = Φ((high − x) / sd) − Φ((low − x) / sd)",
    inputs: [
      { at: "0.0.value", label: "Figure of the beer", ...STYLE_FIGURE_RANGE },
      { at: "0.0.sd", label: "Uncertainty of the figure", ...STYLE_FIGURE_SD_RANGE },
      { at: "0.0.low", label: "Lowest of the style", ...STYLE_FIGURE_RANGE },
      { at: "0.0.high", label: "Highest of the style", ...STYLE_FIGURE_RANGE },
    ],
    gives: "distance, distance from the middle, and for each figure how far outside and the chance of being inside",
    sources: ["bjcp-2021", "abramowitz-stegun-1964"],
    validRange: "1 to 100 figures, each in one unit with its range; lowest below highest.",
    call: styleDistance,
    example: [
      [
        { value: 13, sd: 0.25, low: 10, high: 11.9 },
        { value: 32, sd: 4, low: 25, high: 40 },
      ],
    ],
  },
  {
    id: "judging/differenceOrders",
    words:
      "Which glass of a triangle or duo-trio test holds which of the two beers. The six orders of a triangle, or the four of a duo-trio with either beer as the reference, are used equally often, and chance decides who gets which; what is left over when the number of assessors is no multiple is drawn. Whoever knows the seed knows the answers.",
    equation: "triangle: AAB, ABA, BAA, BBA, BAB, ABB; duo-trio: A AB, A BA, B BA, B AB; shuffled in whole sets",
    inputs: [
      { at: "0.assessors", label: "Assessors", ...ASSESSORS_RANGE },
      { at: "0.seed", label: "Seed of chance", ...SEED_RANGE },
    ],
    gives: "for each assessor the beer of each of three glasses, 0 or 1",
    sources: ["iso-4120-2021", "iso-10399-2017"],
    validRange: "1 to 10 000 assessors, whole numbers.",
    call: differenceOrders,
    example: [{ test: "triangle", assessors: 6, seed: 1 }],
  },
];
