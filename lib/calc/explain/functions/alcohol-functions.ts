import {
  alcoholByVolume,
  alcoholByVolumeFromWeight,
  alcoholByVolumeLinear,
  alcoholByWeight,
  apparentAttenuation,
  apparentRange,
  BEER_RANGE,
  energyPerLitre,
  ethanolDensity,
  FERMENTED_RANGE,
  originalPlatoFromBeer,
  realAttenuation,
  realExtract,
} from "../../alcohol";
import { ATTENUATED_RANGE } from "../../alcohol/extracts";
import { percent, specificGravity } from "../../units";
import type { FunctionInput, FunctionRecord } from "./function-record";

/** The beer of the examples; the span of each reading ends at the other. */
const BEER = { originalPlato: 12, apparentPlato: 3 };
const LINEAR = { originalSg: 1.05, finalSg: 1.01 };

const apparent: FunctionInput = {
  at: "0.apparentPlato",
  label: "Apparent extract of the beer",
  ...apparentRange(BEER.originalPlato),
};
const extracts = (range: typeof FERMENTED_RANGE | typeof ATTENUATED_RANGE): readonly FunctionInput[] => [
  { at: "0.originalPlato", label: "Original extract", ...range, min: BEER.apparentPlato },
  apparent,
];
const RANGE =
  "Original extract 0 to 35 °P; apparent extract from −0.2207 times the original, where nothing real is left, up to it.";
const SHARE_RANGE = RANGE.replace("0 to 35", "0.1 to 35");

/** How the functions of alcohol, attenuation and energy are explained. */
export const ALCOHOL_FUNCTIONS: readonly FunctionRecord[] = [
  {
    id: "alcohol/apparentRange",
    words:
      "What a hydrometer can read in beer of a wort: from the wort itself down to alcohol and water alone, which by Balling reads below zero by 0.2207 of the original extract. A reading further down is a misread hydrometer or another wort.",
    equation: "least = original × (1 − 1 / 0.8192); most = original",
    inputs: [{ at: "0", label: "Original extract", ...FERMENTED_RANGE }],
    gives: "least and most apparent extract, °P",
    sources: ["balling-1865"],
    validRange: "0 to 35 °P.",
    call: apparentRange,
    example: [12],
  },
  {
    id: "alcohol/realExtract",
    words:
      "The extract that is really left in beer. A hydrometer reads beer low because alcohol is lighter than water; Balling's quotient, in its usual straight form, undoes that. A dry beer may read below 0 °P and still hold extract.",
    equation: "real extract = 0.1808 × original + 0.8192 × apparent",
    inputs: extracts(FERMENTED_RANGE),
    gives: "real extract, °P",
    sources: ["balling-1865"],
    validRange: RANGE,
    call: realExtract,
    example: [BEER],
  },
  {
    id: "alcohol/apparentAttenuation",
    words:
      "The share of the extract that seems to have fermented, by the hydrometer. It is the figure that yeast is sold with. Beer lighter than water is attenuated by more than the whole.",
    equation: "apparent attenuation = 1 − apparent / original",
    inputs: extracts(ATTENUATED_RANGE),
    gives: "attenuation, fraction",
    sources: ["balling-1865"],
    validRange: SHARE_RANGE,
    call: apparentAttenuation,
    example: [BEER],
  },
  {
    id: "alcohol/realAttenuation",
    words:
      "The share of the extract that has really fermented, 0.8192 of the apparent attenuation by Balling. Laboratories also use an equation that comes out about 2 % higher; it is not used here.",
    equation: "real attenuation = 1 − real extract / original",
    inputs: extracts(ATTENUATED_RANGE),
    gives: "attenuation, fraction",
    sources: ["balling-1865"],
    validRange: SHARE_RANGE,
    call: realAttenuation,
    example: [BEER],
  },
  {
    id: "alcohol/alcoholByWeight",
    words:
      "The alcohol in the mass of beer. Balling found that 2.0665 g of extract give 1 g of alcohol, 0.9565 g of carbon dioxide and 0.11 g of yeast, and the equation follows from it. Much yeast growth or wild yeast changes the yield by a percent or two.",
    equation: "alcohol = (original − real extract) / (2.0665 − 0.010665 × original)",
    inputs: extracts(FERMENTED_RANGE),
    gives: "alcohol, % of the mass",
    sources: ["balling-1865"],
    validRange: RANGE,
    call: alcoholByWeight,
    example: [BEER],
  },
  {
    id: "alcohol/alcoholByVolume",
    words:
      "The alcohol in the volume of beer at 20 °C: Balling's alcohol by mass times the gravity of the beer over that of alcohol. The popular straight line of 131.25 times the drop reads 0.1 points lower from 1.060 to 1.015 and 0.4 lower from 1.100 to 1.025.",
    equation: "alcohol by volume = alcohol by mass × SG of the beer / 0.7907",
    inputs: extracts(FERMENTED_RANGE),
    gives: "alcohol, % by volume",
    sources: ["balling-1865", "oiml-r22"],
    validRange: RANGE,
    call: alcoholByVolume,
    example: [BEER],
  },
  {
    id: "alcohol/alcoholByVolumeLinear",
    words:
      "The popular estimate of alcohol by volume from the drop of gravity, for comparison with figures found elsewhere. It is common practice without a source and falls behind Balling in strong beer. alcoholByVolume is the method used everywhere else.",
    equation: "alcohol = 131.25 × (original gravity − final gravity)",
    inputs: [
      { at: "0.originalSg", label: "Original gravity", ...specificGravity.range, min: LINEAR.finalSg },
      { at: "0.finalSg", label: "Final gravity", ...specificGravity.range, max: LINEAR.originalSg },
    ],
    gives: "alcohol, % by volume",
    sources: ["trade-practice"],
    validRange: "Gravities 0.96 to 1.2, the final one not above the original.",
    call: alcoholByVolumeLinear,
    example: [LINEAR],
  },
  {
    id: "alcohol/originalPlatoFromBeer",
    words:
      "The strength of the wort that a beer was made of, from an analysis of the beer: Balling's equation the other way round. What was added after fermentation, such as sugar, fruit or water, counts as if it had been in the wort.",
    equation: "original = 100 × (2.0665 × alcohol + real extract) / (100 + 1.0665 × alcohol)",
    inputs: [
      { at: "0.alcoholByWeight", label: "Alcohol by mass", ...BEER_RANGE.alcoholByWeight },
      { at: "0.realExtract", label: "Real extract", ...BEER_RANGE.realExtract },
    ],
    gives: "original extract, °P",
    sources: ["balling-1865"],
    validRange: "Alcohol 0 to 17 % by mass, real extract 0 to 25 °P.",
    call: originalPlatoFromBeer,
    example: [{ alcoholByWeight: 3.803, realExtract: 4.627 }],
  },
  {
    id: "alcohol/ethanolDensity",
    words:
      "The density of ethanol and water at 20 °C, by the general formula of the international alcohol tables. It is for what comes out of a distillation, not for beer, which holds extract.",
    equation: "ρ = Σ A_k p^k, p the mass fraction, with the twelve coefficients of OIML R 22 at 20 °C",
    inputs: [{ at: "0", label: "Alcohol by mass", ...percent.range }],
    gives: "density, kg/L",
    sources: ["oiml-r22"],
    validRange: "0 to 100 % of the mass.",
    call: ethanolDensity,
    example: [5],
  },
  {
    id: "alcohol/alcoholByVolumeFromWeight",
    words:
      "Turns alcohol by mass into alcohol by volume for ethanol and water, as after a distillation. The volumes of the two do not add up, which the density accounts for; a fixed factor of 1.25 is right only near 5 %.",
    equation: "% by volume = % by mass × density(% by mass) / 0.78924",
    inputs: [{ at: "0", label: "Alcohol by mass", ...percent.range }],
    gives: "alcohol, % by volume",
    sources: ["oiml-r22"],
    validRange: "0 to 100 % of the mass.",
    call: alcoholByVolumeFromWeight,
    example: [5],
  },
  {
    id: "alcohol/energyPerLitre",
    words:
      "The food energy of beer: 6.9 kcal in a gram of alcohol and 4.0 in a gram of extract, less 0.1 % of minerals that feed nobody. Carbon dioxide and protein are not told apart.",
    equation: "kcal/L = 10 × (6.9 × alcohol by mass + 4.0 × (real extract − 0.1)) × SG of the beer",
    inputs: extracts(FERMENTED_RANGE),
    gives: "energy, kcal/L",
    sources: ["asbc-beer-33", "balling-1865"],
    validRange: RANGE,
    call: energyPerLitre,
    example: [BEER],
  },
];
