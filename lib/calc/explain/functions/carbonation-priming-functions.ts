import { apparentRange, FERMENTED_RANGE } from "../../alcohol";
import { carbonationAtEnd, co2FromExtract, primingSugar, primingWort, SOLUBILITY_RANGE } from "../../carbonation";
import { PRIMED_RANGE } from "../../carbonation/priming-sugar";
import { litres } from "../../units";
import type { FunctionInput, FunctionRecord } from "./function-record";

/** The beer and the wort of the examples; the span of each reading ends at the others. */
const ORIGINAL = 12;
const FINAL = 3;

/** Inputs of an extract that falls from one reading to another in the example. */
const extracts = (original: string, now: number): readonly FunctionInput[] => [
  { at: `0.${original}`, label: "Extract before fermentation", ...FERMENTED_RANGE, min: now },
  { at: "0.nowPlato", label: "Apparent extract now", unit: "°P", min: FINAL, max: ORIGINAL },
  { at: "0.finalPlato", label: "Apparent extract where it ends", ...apparentRange(ORIGINAL), max: now },
];

const beer: readonly FunctionInput[] = [
  { at: "0.litres", label: "Beer", ...litres.range },
  { at: "0.targetVolumes", label: "Wanted carbonation", ...PRIMED_RANGE },
  { at: "0.celsius", label: "Warmest temperature since fermentation ended", ...SOLUBILITY_RANGE.celsius },
];

const GAS = "gas from 100 g of wort = 0.9565 A / (1 + 1.0665 A / 100), A the alcohol of the beer in % by mass";

/** How the functions of carbonation in the closed container are explained. */
export const CARBONATION_PRIMING_FUNCTIONS: readonly FunctionRecord[] = [
  {
    id: "carbonation/primingSugar",
    words:
      "The sugar that carbonates beer in a closed bottle or keg. The sugar ferments wholly to alcohol and gas, which makes up what the beer lacks; yeast growth would take about 5 % more sugar and is left out, to the safe side. Bottles burst when fermentation had not ended or the sugar was measured by the spoon: weigh it, mix it in evenly, and keep to what the maker of the bottle states.",
    equation:
      "sugar = litres × (target − gas left) × 1.9635 g/L / gas from a gram of sugar: 0.5143 sucrose, 0.4442 dextrose monohydrate, 0.4886 anhydrous",
    inputs: beer,
    gives: "sugar, g",
    sources: ["iupac-2021", "trade-practice"],
    validRange: "Target 0 to 6 volumes, −2 to 45 °C, one of the three sugars.",
    call: primingSugar,
    example: [{ litres: 23, targetVolumes: 2.7, celsius: 18, sugar: "sucrose" }],
  },
  {
    id: "carbonation/primingWort",
    words:
      "The wort that carbonates beer in a closed container, saved from the kettle or in full ferment. Balling gives the gas of its extract; the wort must carbonate itself as well as the beer, which the usual rule leaves out, so this asks for a tenth to a fifth more. Wort that has begun to ferment brings gas of its own. Let the beer end first and know where the wort ends, or bottles burst; saved wort must be boiled again or kept sterile.",
    equation: `wort = litres × (target − gas left) / (gas of the wort + gas that it holds − target), in volumes, with ${GAS}`,
    inputs: [...beer, ...extracts("wortPlato", 8)],
    gives: "wort, L, or that it is too weak",
    sources: ["balling-1865", "mass-balance"],
    validRange: "Target 0 to 6 volumes, −2 to 45 °C, wort up to 35 °P whose extract falls.",
    call: primingWort,
    example: [{ litres: 20, targetVolumes: 2.5, celsius: 18, wortPlato: ORIGINAL, nowPlato: 8, finalPlato: FINAL }],
  },
  {
    id: "carbonation/co2FromExtract",
    words:
      "The carbon dioxide that yeast makes between two readings of the hydrometer, for each litre of wort. Balling: 2.0665 g of extract give 1 g of alcohol, 0.9565 g of gas and 0.11 g of yeast. A short rule takes 0.4629 g of gas from each gram of real extract and comes out some 2 % lower, because it forgets that beer weighs less than its wort. Gas that fills a closed room displaces the air: see that a fermenting cellar is aired.",
    equation: `gas = 10 × density of the wort × (gas at the end − gas now), with ${GAS}`,
    inputs: extracts("originalPlato", 3.5),
    gives: "carbon dioxide, g/L",
    sources: ["balling-1865", "nbs-440-1942"],
    validRange:
      "Wort up to 35 °P; readings from where nothing real is left up to the wort, the later not above the earlier.",
    call: co2FromExtract,
    example: [{ originalPlato: ORIGINAL, nowPlato: 3.5, finalPlato: FINAL }],
  },
  {
    id: "carbonation/carbonationAtEnd",
    words:
      "The carbonation that beer reaches by itself when it is closed in before fermentation has ended. Half a degree Plato too early is a volume of gas, and two degrees burst any bottle. The final extract is best taken from a forced ferment of the same wort. Priming sugar comes on top and is left out; hold the answer against the bottle with bottlePressure.",
    equation: `carbonation = gas left + gas from extract / 1.9635 g/L, with ${GAS}`,
    inputs: [
      ...extracts("originalPlato", 3.5),
      { at: "0.celsius", label: "Warmest temperature so far", ...SOLUBILITY_RANGE.celsius },
    ],
    gives: "carbonation, volumes, or that no container holds it",
    sources: ["balling-1865", "trade-practice"],
    validRange: "Wort up to 35 °P whose extract falls, −2 to 45 °C.",
    call: carbonationAtEnd,
    example: [{ originalPlato: ORIGINAL, nowPlato: 3.5, finalPlato: FINAL, celsius: 18 }],
  },
];
