import { grams, kilograms, litres, millilitres, milliequivalentsPerKilogramPh, fraction, ph } from "../../units";
import { ACID_SOLUTIONS, KOLBACH_REACTION, LIQUOR_PH_RANGE, MASH_PH_SPAN, TREATED_WATER_RANGE } from "../../water";
import {
  WATER_PH_SPAN,
  acidFor,
  acidMilliequivalents,
  ionsFromAcids,
  mashPh,
  phOfWater,
  spargeAcidFor,
} from "../../water";
import { ACID_DENSITY_RANGE, ACID_STRENGTH_RANGE } from "../../water/acids";
import { CURVATURE_RANGE, DISTILLED_WATER_PH_RANGE } from "../../water/mashed-malt";
import { HARDNESS_REACTION_RANGE } from "../../water/proton-balance";
import type { FunctionInput, FunctionRecord } from "./function-record";
import { EXAMPLE_WATER, FULLEST_WATER, ionInputs } from "./water-inputs";

const CAUTION =
  "Concentrated acids burn skin and eyes: pour acid into water and never water into acid, wear goggles and gloves, use food grade only, and follow the maker's safety sheet and local codes.";

const bottle = (at: string, label: string): readonly FunctionInput[] => [
  { at: `${at}.massFraction`, label: `Strength of ${label}`, ...ACID_STRENGTH_RANGE },
  { at: `${at}.density`, label: `Density of ${label}`, ...ACID_DENSITY_RANGE },
];

const acidRow = (at: string): readonly FunctionInput[] => [
  { at: `${at}.ml`, label: "Acid added", ...millilitres.range },
  ...bottle(`${at}.acid`, "the acid added"),
];

const WATER_INPUTS: readonly FunctionInput[] = [
  { at: "0.water.litres", label: "Water", ...TREATED_WATER_RANGE },
  { at: "0.water.ph", label: "pH of the water", ...LIQUOR_PH_RANGE },
  ...ionInputs("0.water.ions", " of the water"),
  { at: "0.water.salts.slakedLime", label: "Slaked lime", ...grams.range },
];

const TARGET_INPUTS: readonly FunctionInput[] = [
  { at: "0.mostMl", label: "Most acid", ...millilitres.range },
  ...bottle("0.acid", "the acid to add"),
];

const malt = (row: number, label: string): readonly FunctionInput[] => [
  { at: `0.grist.${String(row)}.kg`, label, ...kilograms.range },
  { at: `0.grist.${String(row)}.buffering`, label: `Buffering of ${label}`, ...milliequivalentsPerKilogramPh.range },
  { at: `0.grist.${String(row)}.lacticFraction`, label: `Lactic acid in ${label}`, ...fraction.range },
];

// The second malt carries a titration, which has to hold its own pH between its ends.
const TITRATED = { own: 5.4, from: 5.39, to: 5.41 } as const;

const MASH_INPUTS: readonly FunctionInput[] = [
  ...WATER_INPUTS,
  ...malt(0, "pale malt"),
  { at: "0.grist.0.distilledWaterPh", label: "Distilled-water pH of pale malt", ...DISTILLED_WATER_PH_RANGE },
  ...malt(1, "Munich malt"),
  {
    at: "0.grist.1.distilledWaterPh",
    label: "Distilled-water pH of Munich malt",
    unit: "pH",
    min: TITRATED.from,
    max: TITRATED.to,
  },
  { at: "0.grist.1.titration.quadratic", label: "Quadratic term", ...CURVATURE_RANGE },
  { at: "0.grist.1.titration.cubic", label: "Cubic term", ...CURVATURE_RANGE, unit: "mEq/(kg·pH³)" },
  { at: "0.grist.1.titration.fromPh", label: "First pH titrated", unit: "pH", min: ph.range.min, max: TITRATED.own },
  { at: "0.grist.1.titration.toPh", label: "Last pH titrated", unit: "pH", min: TITRATED.own, max: ph.range.max },
  { at: "0.hardnessReaction.calcium", label: "Protons for calcium", ...HARDNESS_REACTION_RANGE },
  { at: "0.hardnessReaction.magnesium", label: "Protons for magnesium", ...HARDNESS_REACTION_RANGE },
  ...acidRow("0.acids.0"),
];

const WATER = { litres: 15, ions: EXAMPLE_WATER, ph: 7.5, salts: { slakedLime: 0 }, carbonDioxide: "kept" };

const MASH = {
  water: WATER,
  grist: [
    { kg: 4, distilledWaterPh: 5.75, buffering: 38, lacticFraction: 0 },
    {
      kg: 1,
      distilledWaterPh: TITRATED.own,
      buffering: 41,
      lacticFraction: 0,
      titration: { quadratic: 0, cubic: 0, fromPh: TITRATED.from, toPh: TITRATED.to },
    },
  ],
  hardnessReaction: KOLBACH_REACTION,
  acids: [{ acid: ACID_SOLUTIONS.lactic88, ml: 1 }],
};

const SOURED_L = 20;
const SOURED = { acid: ACID_SOLUTIONS.hydrochloric10, ml: millilitres(10) };
const CHLORIDE = ionsFromAcids({ litres: litres(SOURED_L), acids: [SOURED] }).chloride;

const BALANCE =
  "sum over malts of kg × (buffering × (pH − own pH) + lactic acid given off) + acid × mean charge at pH + calcium / 3.5 + magnesium / 7 = alkalinity − carbon × (bicarbonate + 2 carbonate share at pH) + free acid of the water, in mEq";

/** How acids and the balance of protons are explained. */
export const WATER_ACID_FUNCTIONS: readonly FunctionRecord[] = [
  {
    id: "water/acidMilliequivalents",
    words: `The acidity that measured acid brings, by how much of its protons it has given off at the pH where it ends. Lactic acid gives 97 % at pH 5.4, phosphoric acid barely more than its first proton. Constants are those of 25 °C. ${CAUTION}`,
    equation:
      "mEq = mL × 1000 × density × strength / molar mass × mean charge; mean charge from the dissociation constants at the pH",
    inputs: [
      { at: "0.ml", label: "Acid", ...millilitres.range },
      ...bottle("0.acid", "the acid"),
      { at: "0.toPh", label: "pH where it ends", ...ph.range },
    ],
    gives: "acidity, mEq",
    sources: ["crc-handbook", "iupac-2021"],
    validRange: "pH 0 to 14, strengths of 0.1 to 100 %.",
    call: acidMilliequivalents,
    example: [{ acid: ACID_SOLUTIONS.lactic88, ml: 2, toPh: 5.4 }],
  },
  {
    id: "water/ionsFromAcids",
    words: `The chloride and sulfate that hydrochloric and sulfuric acid leave in a water; other acids leave none of the six ions. The alkalinity that they use up is not taken off here, because it depends on the pH: phOfWater and mashPh count it. ${CAUTION}`,
    equation: "mg/L = mL × 1000 × density × strength / molar mass of the acid × molar mass of the ion / litres",
    inputs: [
      {
        at: "0.litres",
        label: "Water",
        unit: "L",
        min: (SOURED_L * CHLORIDE) / FULLEST_WATER,
        max: TREATED_WATER_RANGE.max,
      },
      { at: "0.acids.0.ml", label: "Acid added", unit: "mL", min: 0, max: (SOURED.ml * FULLEST_WATER) / CHLORIDE },
      ...bottle("0.acids.0.acid", "the acid added"),
    ],
    gives: "concentrations added, mg/L",
    sources: ["iupac-2021"],
    validRange: "0.001 to 100 000 L, up to 10 000 mg/L of each ion.",
    call: ionsFromAcids,
    example: [{ litres: SOURED_L, acids: [SOURED] }],
  },
  {
    id: "water/phOfWater",
    words: `The pH of a water after salts and acids, without malt, from its alkalinity and the carbon behind it. A water is described by its analysis with its pH; slaked lime adds base without carbon, chalk and baking soda add both. Nothing settles out, so that limed water reads too high once chalk drops. ${CAUTION}`,
    equation:
      "acid × mean charge = alkalinity − carbon × (bicarbonate + 2 carbonate share at pH) − hydroxide + hydrogen ions",
    inputs: [...WATER_INPUTS, ...acidRow("0.acids.0")],
    gives: "pH at 25 °C, or the end of the span that it lies beyond",
    sources: ["plummer-busenberg-1982", "crc-handbook"],
    validRange: "Waters of pH 5 to 10.5 that end between pH 2 and 12.6.",
    call: phOfWater,
    example: [{ water: WATER, acids: [{ acid: ACID_SOLUTIONS.lactic88, ml: 1 }] }],
  },
  {
    id: "water/spargeAcidFor",
    words: `The acid that brings sparge water to a pH, commonly 5.5 to 6, so that it washes no tannin out of the husks. It is what the alkalinity gives up on the way to the target, over what a millilitre of the acid gives off there. ${CAUTION}`,
    equation: "mL = (alkalinity used up between the pH of the water and the target) / (mEq per mL at the target)",
    inputs: [
      ...WATER_INPUTS,
      ...acidRow("0.acids.0"),
      { at: "0.targetPh", label: "Target", ...WATER_PH_SPAN },
      ...TARGET_INPUTS,
    ],
    gives: "acid, mL; or the pH without any, or with the most that may be added",
    sources: ["plummer-busenberg-1982", "crc-handbook", "trade-practice"],
    validRange: "Targets of pH 2 to 12.6 for waters of pH 5 to 10.5.",
    call: spargeAcidFor,
    example: [
      {
        water: WATER,
        acids: [{ acid: ACID_SOLUTIONS.phosphoric10, ml: 1 }],
        acid: ACID_SOLUTIONS.phosphoric10,
        targetPh: 5.6,
        mostMl: 100,
      },
    ],
  },
  {
    id: "water/mashPh",
    words:
      "The pH at which a mash settles, read at room temperature: the one pH where acid given off and base taken up cancel. Each malt buffers around its own pH in distilled water, along a straight line or its titration; alkalinity is used up by the carbonate system, added acids give off what the pH lets them. Kolbach's 3.5 and 7 for calcium and magnesium are for knocked-out wort: Barth and Zaman found that mashes need other figures for each malt, so they can be changed. The time of the rest and the fineness of the grist are left out, and so is chalk that did not dissolve.",
    equation: BALANCE,
    inputs: MASH_INPUTS,
    gives: "pH at 20 to 25 °C, and the acid of each malt, each acid, calcium, magnesium and the alkalinity, mEq",
    sources: ["delange-2015", "plummer-busenberg-1982", "kolbach-1953", "barth-zaman-2015", "crc-handbook"],
    validRange: "Mashes that settle between pH 3 and 10; malts are titrated between about 4.6 and 6.",
    call: mashPh,
    example: [MASH],
  },
  {
    id: "water/acidFor",
    words: `The acid that brings a mash to a pH, as the balance of mashPh read the other way: the acid that is missing at the target, over what a millilitre gives off there. A mash that is lower already, or needs more than may be added, says so with the pH it has. Add most of it, measure, then add the rest. ${CAUTION}`,
    equation: "mL = −(acid left over at the target, both sides of the balance of mashPh) / (mEq per mL at the target)",
    inputs: [...MASH_INPUTS, { at: "0.targetPh", label: "Target", ...MASH_PH_SPAN }, ...TARGET_INPUTS],
    gives: "acid, mL; or the pH without any, or with the most that may be added",
    sources: ["delange-2015", "plummer-busenberg-1982", "kolbach-1953", "crc-handbook"],
    validRange: "Targets of pH 3 to 10.",
    call: acidFor,
    example: [{ ...MASH, targetPh: 5.4, acid: ACID_SOLUTIONS.lactic88, mostMl: 20 }],
  },
];
