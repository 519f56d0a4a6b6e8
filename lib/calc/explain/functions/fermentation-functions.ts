import { apparentRange, MOST_ATTENUATION } from "../../alcohol";
import {
  apparentAttenuationOf,
  ATTENUATION_RANGE,
  cellsInPack,
  cellsToPitch,
  COURSE_RANGE,
  fermentationCurve,
  heatOfFermentation,
  LOGGED_RANGE,
  PACK_CELLS_RANGE,
  PACK_RANGE,
  packsToPitch,
  platoOnDay,
  predictedFinalPlato,
  stableGravity,
  STARTER_RANGE,
  starterGrowth,
} from "../../fermentation";
import { WHOLE } from "../../fermentation/apparent-attenuation-of";
import { PITCHED_RANGE } from "../../fermentation/cells-to-pitch";
import { ORIGINAL_RANGE } from "../../fermentation/predicted-final-plato";
import { billionCells, kilograms, litres, millionPerMlPlato } from "../../units";
import type { FunctionInput, FunctionRecord } from "./function-record";

/** The examples' wort of malt and sugar: the shares are the whole to a millionth, so one leaves the other no room. */
const MALT = { share: 0.9, attenuation: 0.75 };
const SUGAR = { share: 0.1, attenuation: MOST_ATTENUATION };
const ORIGINAL = 12;

const part = (at: string, what: string, share: number): readonly FunctionInput[] => [
  {
    at: `${at}.share`,
    label: `Share of the extract from ${what}`,
    unit: "",
    min: share + WHOLE.min - 1,
    max: share + WHOLE.max - 1,
  },
  { at: `${at}.attenuation`, label: `Apparent attenuation of ${what}`, ...ATTENUATION_RANGE },
];
const parts = (at: string): readonly FunctionInput[] => [
  ...part(`${at}.0`, "malt", MALT.share),
  ...part(`${at}.1`, "sugar", SUGAR.share),
];

const point = (at: string, which: string): readonly FunctionInput[] => [
  { at: `${at}.day`, label: `Day of the ${which} reading`, ...LOGGED_RANGE.day },
  { at: `${at}.plato`, label: `Gravity of the ${which} reading`, ...LOGGED_RANGE.plato },
  { at: `${at}.sd`, label: `Uncertainty of the ${which} reading`, ...LOGGED_RANGE.sd },
];
const READINGS = ["first", "second", "third", "fourth", "fifth"].flatMap((which, i) => point(`0.points.${i}`, which));
const BOTTLES =
  "Beer that still ferments in a closed bottle can burst it, and glass in the face is the worst accident of brewing at home: wear eye protection, and keep to what the maker of the bottle states.";

/** How the functions of yeast and fermentation are explained. */
export const FERMENTATION_FUNCTIONS: readonly FunctionRecord[] = [
  {
    id: "fermentation/apparentAttenuationOf",
    words:
      "The apparent attenuation of a wort of several parts: their mean, weighted by extract. Real attenuation is a mean by mass and Balling makes the apparent one proportional to it. Plain sugar counts 1.2207, because alcohol is lighter than water; counting it as 1 leaves beer with much sugar too heavy.",
    equation: "attenuation = Σ share × attenuation of the part",
    inputs: parts("0"),
    gives: "apparent attenuation, fraction; above 1 for beer lighter than water",
    sources: ["mass-balance", "balling-1865"],
    validRange: "Shares of 0 to 1 that add up to 1, attenuation of 0 to 1.2207.",
    call: apparentAttenuationOf,
    example: [[MALT, SUGAR]],
  },
  {
    id: "fermentation/predictedFinalPlato",
    words:
      "The apparent extract of the finished beer from what its wort consists of. It is as good as the attenuation of the malt, which mash and yeast decide within about four points. Much sugar brings it below 0 °P, which is beer lighter than water and no mistake.",
    equation: "final = original × (1 − Σ share × attenuation)",
    inputs: [{ at: "0.originalPlato", label: "Original extract", ...ORIGINAL_RANGE }, ...parts("0.parts")],
    gives: "apparent final extract, °P",
    sources: ["mass-balance", "balling-1865"],
    validRange: "0 to 35 °P; parts as for apparentAttenuationOf.",
    call: predictedFinalPlato,
    example: [{ originalPlato: ORIGINAL, parts: [MALT, SUGAR] }],
  },
  {
    id: "fermentation/cellsToPitch",
    words:
      "The living yeast that a wort needs by the rate of practice: 0.75 million cells for each mL and °P for ales, 1.5 for lagers, more when the wort is strong or cold. It is a rate that works, not a limit of nature.",
    equation: "10⁹ cells = rate in million/(mL·°P) × litres × °P",
    inputs: [
      { at: "0.litres", label: "Wort", ...litres.range },
      { at: "0.plato", label: "Its strength", ...PITCHED_RANGE },
      { at: "0.millionPerMlPlato", label: "Pitch rate", ...millionPerMlPlato.range },
    ],
    gives: "living cells, 10⁹",
    sources: ["fix-fix-1997", "trade-practice"],
    validRange: "0 to 35 °P, up to 10 million for each mL and °P.",
    call: cellsToPitch,
    example: [{ litres: 20, plato: ORIGINAL, millionPerMlPlato: 0.75 }],
  },
  {
    id: "fermentation/cellsInPack",
    words:
      "The living cells left in a pack of yeast. Liquid yeast loses 20 to 25 % a month in the fridge, dry yeast 2 to 6 % a year and twice as fast for each 8 K warmer: common practice without a source, so it gives limits too. A pack that stood warm wants a count or a starter.",
    equation: "cells = cells when packed × (1 − loss)^(days / 30 or 365), dry × 2^((t − 4) / 8) in the exponent",
    inputs: [
      { at: "0.cells", label: "Cells when packed", ...billionCells.range },
      { at: "0.ageDays", label: "Age", ...PACK_RANGE.days },
      { at: "0.celsius", label: "Storage temperature; liquid yeast up to 8 °C", ...PACK_RANGE.celsius.dry },
    ],
    gives: "living cells, 10⁹: expected, low and high",
    sources: ["trade-practice"],
    validRange: "Up to 1500 days; dry yeast at 0 to 25 °C, liquid at 0 to 8 °C.",
    call: cellsInPack,
    example: [{ cells: 100, ageDays: 30, form: "liquid", celsius: 4 }],
  },
  {
    id: "fermentation/packsToPitch",
    words:
      "How many packs of yeast hold the cells that a wort needs. A pack is opened whole, so the count is rounded up; what is left of the last one keeps badly.",
    equation: "packs = ⌈cells needed / living cells in a pack⌉",
    inputs: [
      { at: "0.cells", label: "Cells needed", ...billionCells.range },
      { at: "0.cellsInPack", label: "Living cells in a pack", ...PACK_CELLS_RANGE },
    ],
    gives: "packs, a whole number",
    sources: ["mass-balance"],
    validRange: "A pack of a million cells or more.",
    call: packsToPitch,
    example: [{ cells: 180, cellsInPack: 77.5 }],
  },
  {
    id: "fermentation/starterGrowth",
    words:
      "The yeast that a starter grows, by the gram of extract: 0.5·10⁹ new cells when left standing, 1.4·10⁹ on a stirrer, each give or take a quarter. It is common practice without a source. A starter with more than 1.4·10⁹ cells on each gram hardly grows, and it says what extract it takes.",
    equation: "new cells = grams of extract × 0.5 or 1.4 ·10⁹",
    inputs: [
      { at: "0.cells", label: "Living cells put in", ...billionCells.range },
      { at: "0.extractG", label: "Extract in the starter", ...STARTER_RANGE },
    ],
    gives: "new and all cells, 10⁹: expected, low and high; or that it is crowded",
    sources: ["trade-practice"],
    validRange: "1 g to 1000 kg of extract, up to 1.4·10⁹ cells on each gram.",
    call: starterGrowth,
    example: [{ cells: 80, extractG: 100, method: "stirred" }],
  },
  {
    id: "fermentation/heatOfFermentation",
    words:
      "The heat that fermentation sets free, for sizing the cooling of a fermenter: 20 L from 12 °P warm themselves by some 10 K if none of it gets away. Enthalpies of formation give the same within 1 %. It counts extract that really ferments; by the apparent fall it would be a fifth too much.",
    equation: "heat = 587 kJ/kg × fermented extract",
    inputs: [{ at: "0", label: "Extract that ferments", ...kilograms.range }],
    gives: "heat, kJ",
    sources: ["narziss"],
    validRange: "0 to 100 000 kg of real extract.",
    call: heatOfFermentation,
    example: [1.5],
  },
  {
    id: "fermentation/fermentationCurve",
    words: `The course of a fermentation through its logged gravities: a logistic that starts at the original extract, by weighted least squares, with the predicted end as one more reading. It gives the final extract and the day on which the beer comes within 0.1 °P of it, each with its uncertainty. A cooling step, a second pitch or dry hops that ferment on are not in the curve, and a day it names is no leave to bottle: stableGravity is. ${BOTTLES}`,
    equation: "°P(t) = final + (original − final) × (1 + e^(−B M)) / (1 + e^(B (t − M)))",
    inputs: [
      { at: "0.originalPlato", label: "Original extract", ...LOGGED_RANGE.original, min: 3 },
      ...READINGS,
      { at: "0.expectedFinal.plato", label: "Predicted final extract", ...apparentRange(ORIGINAL) },
      { at: "0.expectedFinal.sd", label: "Its uncertainty", ...LOGGED_RANGE.sd },
    ],
    gives: "final extract, °P, and day it is done, with uncertainties; or why there is no answer",
    sources: ["speers-2003", "marquardt-1963"],
    validRange: "Original extract 1 to 35 °P, 180 days, readings on three days or more.",
    call: fermentationCurve,
    example: [
      {
        originalPlato: ORIGINAL,
        points: [
          { day: 1, plato: 10.5, sd: 0.25 },
          { day: 2, plato: 7.7, sd: 0.25 },
          { day: 3, plato: 4.8, sd: 0.25 },
          { day: 4, plato: 3.5, sd: 0.25 },
          { day: 6, plato: 3, sd: 0.25 },
        ],
        expectedFinal: { plato: 3, sd: 0.5 },
      },
    ],
  },
  {
    id: "fermentation/platoOnDay",
    words:
      "The apparent extract on a day of a fitted fermentation, to draw its curve beside the readings. Before the first reading and after the last one it is the shape of the formula that speaks, not the beer.",
    equation: "°P = final + (original − final) × (1 + e^(−B M)) / (1 + e^(B (day − M)))",
    inputs: [
      { at: "0.originalPlato", label: "Original extract", ...LOGGED_RANGE.original, min: 3 },
      { at: "0.finalPlato", label: "Final extract", ...apparentRange(ORIGINAL) },
      { at: "0.ratePerDay", label: "Rate", ...COURSE_RANGE.rate },
      { at: "0.middleDay", label: "Middle", ...COURSE_RANGE.middle },
      { at: "0.day", label: "Day", ...LOGGED_RANGE.day },
    ],
    gives: "apparent extract, °P",
    sources: ["speers-2003"],
    validRange: "Original extract 1 to 35 °P, 0 to 180 days.",
    call: platoOnDay,
    example: [{ originalPlato: ORIGINAL, finalPlato: 3, ratePerDay: 1.5, middleDay: 2, day: 2 }],
  },
  {
    id: "fermentation/stableGravity",
    words: `Whether gravity has stood still, so that the beer may be packaged: the last reading against the latest at least two days older, within twice their uncertainty, and no further above the predicted end than that. It tells how much gas a fall hidden by the instrument could still make. A stuck fermentation stands still too and starts again in the bottle; so may beer with dry hops, fruit or wild yeast, and beer that gets warmer. ${BOTTLES}`,
    equation: "stable where |fall| ≤ 2 √(sd₁² + sd₂²) and last − predicted ≤ 2 √(sd² + sd_predicted²)",
    inputs: [
      ...point("0.points.0", "first"),
      ...point("0.points.1", "last"),
      { at: "0.expectedFinal.plato", label: "Predicted final extract", ...LOGGED_RANGE.plato },
      { at: "0.expectedFinal.sd", label: "Its uncertainty", ...LOGGED_RANGE.sd },
    ],
    gives: "gravity, °P, and hidden gas, g/kg; or why it must not be packaged yet",
    sources: ["trade-practice", "balling-1865"],
    validRange: "Readings within 180 days; an uncertainty above 0.3 °P never says yes.",
    call: stableGravity,
    example: [
      {
        points: [
          { day: 9, plato: 3.1, sd: 0.1 },
          { day: 12, plato: 3, sd: 0.1 },
        ],
        expectedFinal: { plato: 3, sd: 0.5 },
      },
    ],
  },
];
