import {
  attenuationShift,
  fermentability,
  firstWortPlato,
  gristExtract,
  GRAIN_DISPLACEMENT,
  MASH_CURVE_RANGE,
  MASHED_GRIST_RANGE,
  mashThicknessLimit,
  mashVolume,
  starchConversion,
} from "../../mash";
import { fraction, kilograms, litres, litresPerKilogram } from "../../units";
import { fieldInput } from "./field-input";
import type { FunctionInput, FunctionRecord } from "./function-record";

const CURVE = [
  [0, 66],
  [60, 66],
] as const;
const FIRST_WORT = { water: 3, maltWater: 0, dissolved: 0.9 };
const VOLUME = { water: 15, grist: 5 };

/** Each point of the curve, no earlier than the one before it and no later than the one after it. */
const curveInputs: readonly FunctionInput[] = [
  fieldInput("curve.0.0", "Minute of the first point", { ...MASH_CURVE_RANGE.minute, max: CURVE[1][0] }),
  fieldInput("curve.0.1", "Temperature there", MASH_CURVE_RANGE.celsius),
  fieldInput("curve.1.0", "Minute of the second point", { ...MASH_CURVE_RANGE.minute, min: CURVE[0][0] }),
  fieldInput("curve.1.1", "Temperature there", MASH_CURVE_RANGE.celsius),
];

const KINETICS =
  "Starch opens by gelatinisation, two amylases turn it into sugar and dextrin and die, each at its own rate over the real temperatures.";
const SCHEME =
  "closed → open starch at k(T) up to a share; open starch → dextrin, sugar and dextrin → sugar in proportion to α(t), β(t); dα/dt = −kα(T) α, dβ/dt = −kβ(T) β";
const KINETIC_RANGE = "Rests of 55 to 78 °C; 0 to 102 °C are followed, up to 48 h.";

/** How the functions of the mash are explained. */
export const MASH_FUNCTIONS: readonly FunctionRecord[] = [
  {
    id: "mash/gristExtract",
    words:
      "The extract that a fermentable holds: its dry mass times the yield of the laboratory. No kettle gets all of it; what it gets is the conversion and the run-off.",
    equation: "extract = mass × (1 − moisture) × extract of the dry substance",
    inputs: [
      fieldInput("kg", "Mass", kilograms.range),
      fieldInput("extract", "Extract of the dry substance", fraction.range),
      fieldInput("moisture", "Moisture", fraction.range),
    ],
    gives: "extract, kg",
    sources: ["mass-balance"],
    validRange: "Shares from 0 to 1.",
    call: gristExtract,
    example: [{ kg: 5, extract: 0.8, moisture: 0.04 }],
  },
  {
    id: "mash/firstWortPlato",
    words:
      "The strength of the first wort: extract in solution over everything liquid in the mash. The water of the malt counts as solvent; popular forms leave it out and come out higher by a few tenths.",
    equation: "first wort = 100 × extract / (water + moisture of the malt + extract)",
    inputs: [
      fieldInput("water", "Mash water", { ...kilograms.range, min: 0.6 }),
      fieldInput("maltWater", "Moisture of the malt", kilograms.range),
      fieldInput("dissolved", "Extract in solution", { ...kilograms.range, max: 4.5 }),
    ],
    gives: "extract, °P",
    sources: ["narziss", "mass-balance"],
    validRange: "Up to 60 °P, past which no mash flows.",
    call: firstWortPlato,
    example: [FIRST_WORT],
  },
  {
    id: "mash/mashVolume",
    words:
      "The space that water and grain take up together. A kilogram of grain is taken as 0.67 L beside its water, which is common practice without a source.",
    equation: "volume = water + 0.67 × grist",
    inputs: [
      fieldInput("water", "Mash water", {
        ...litres.range,
        max: litres.range.max - GRAIN_DISPLACEMENT * VOLUME.grist,
      }),
      fieldInput("grist", "Grist", kilograms.range),
    ],
    gives: "volume, L",
    sources: ["trade-practice"],
    validRange: "Up to 100 000 L.",
    call: mashVolume,
    example: [VOLUME],
  },
  {
    id: "mash/mashThicknessLimit",
    words:
      "Between which thicknesses a grist can be mashed: stirrable at one end, below the rim at the other. Where the thickest mash already comes over the rim, the answer is the grist that fits.",
    equation: "most water = capacity − 0.67 × grist; least water = thickest × grist",
    inputs: [
      fieldInput("grist", "Grist", MASHED_GRIST_RANGE),
      fieldInput("capacity", "Space for the mash", litres.range),
      fieldInput("thickest", "Thickest mash that stirs", litresPerKilogram.range),
    ],
    gives: "water, L, and thickness, L/kg; or the grist that fits, kg",
    sources: ["trade-practice"],
    validRange: "Grist from 1 g, mashes up to 20 L/kg.",
    call: mashThicknessLimit,
    example: [{ grist: 5, capacity: 20, thickest: 2.2 }],
  },
  {
    id: "mash/fermentability",
    words: `How far a wort can ferment, from the temperatures that its mash really went through. ${KINETICS} The pace of hydrolysis is fitted to measured worts of one malt; thickness, pH, grind and the enzymes of the single malt are left out, and the popular rule of one degree, one point is not used.`,
    equation: SCHEME,
    inputs: curveInputs,
    gives: "fermentable share of the extract, limit of apparent attenuation, starch converted, enzymes left, fractions",
    sources: [
      "brandam-2003",
      "koljonen-1995",
      "muller-1990",
      "potter-coulter",
      "chandrasekhar-mash",
      "harris-macwilliam-1961",
      "balling-1865",
    ],
    validRange: KINETIC_RANGE,
    call: fermentability,
    example: [{ curve: CURVE }],
  },
  {
    id: "mash/starchConversion",
    words: `The share of the starch that a mash turns into sugar and dextrin. ${KINETICS} What coarse grist, a thick mash or cold corners leave behind is not in it.`,
    equation: SCHEME,
    inputs: curveInputs,
    gives: "share of the starch, fraction",
    sources: ["brandam-2003", "koljonen-1995", "potter-coulter", "harris-macwilliam-1961"],
    validRange: KINETIC_RANGE,
    call: starchConversion,
    example: [{ curve: CURVE }],
  },
  {
    id: "mash/attenuationShift",
    words: `By how much a mash moves the attenuation of the beer against an hour at 66 °C, the mash behind the figure that yeast is sold with. ${KINETICS} The standard deviation is a judgement: a point for the malt and a quarter of the shift for the model.`,
    equation: "shift = limit of apparent attenuation − that of an hour at 66 °C; sd² = 0.01² + (shift / 4)²",
    inputs: curveInputs,
    gives:
      "difference of apparent attenuation and its standard deviation, fractions; or the starch converted, if too little",
    sources: ["brandam-2003", "koljonen-1995", "trade-practice"],
    validRange: KINETIC_RANGE,
    call: attenuationShift,
    example: [{ curve: CURVE }],
  },
];
