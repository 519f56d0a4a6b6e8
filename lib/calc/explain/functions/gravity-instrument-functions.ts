import {
  COLD_READING_RANGE,
  correctHydrometer,
  correctRefractometer,
  FINAL_BRIX_RANGE,
  finalGravityFromBrix,
  HYDROMETER_RANGE,
  originalPlatoFromBrix,
  REFRACTOMETER_RANGE,
} from "../../gravity";
import { specificGravity } from "../../units";
import type { FunctionInput, FunctionRecord } from "./function-record";

/** Readings of the example of two refractometer readings: the one must not pass the other. */
const ORIGINAL_BRIX = 12;
const FINAL_BRIX = 6;

const correction: FunctionInput = { at: "0.correction", label: "Wort correction", ...REFRACTOMETER_RANGE.correction };

/** How the corrections of what brewers' instruments read are explained. */
export const GRAVITY_INSTRUMENT_FUNCTIONS: readonly FunctionRecord[] = [
  {
    id: "gravity/correctHydrometer",
    words:
      "The gravity at 20 °C from a hydrometer read at another temperature. The wort is taken to expand as water does and the glass as soda-lime. Wort expands more than water when hot, so above 40 °C the result is low, by up to 0.002 at 60 °C: cool a hot sample. It also spares the hand and the glass, which breaks in hot wort.",
    equation: "SG = reading × water(calibration) / water(sample) / (1 + 25·10⁻⁶ × (sample − calibration))",
    inputs: [
      { at: "0.sg", label: "Reading", ...specificGravity.range },
      { at: "0.sampleC", label: "Temperature of the sample", ...HYDROMETER_RANGE },
      { at: "0.calibrationC", label: "Temperature on the hydrometer", ...HYDROMETER_RANGE },
    ],
    gives: "specific gravity 20/20",
    sources: ["kell-1975", "iso-hydrometers"],
    validRange: "Sample and calibration 0 to 60 °C.",
    call: correctHydrometer,
    example: [{ sg: 1.05, sampleC: 30, calibrationC: 20 }],
  },
  {
    id: "gravity/correctRefractometer",
    words:
      "The reading at 20 °C of a refractometer that does not compensate temperature itself, by straight lines in the table for sucrose. The temperature of the prism counts, not that of the kettle. The warm half of the table was not at hand, so above 20 °C it has no answer.",
    equation: "°Bx at 20 °C = reading + correction of the table (reading, temperature)",
    inputs: [
      { at: "0.brix", label: "Reading", ...COLD_READING_RANGE.brix },
      { at: "0.celsius", label: "Temperature of the prism", ...COLD_READING_RANGE.celsius },
    ],
    gives: "reading at 20 °C, °Bx",
    sources: ["oiv-ma-as2-02"],
    validRange: "10 to 30 °Bx and 5 to 20 °C.",
    call: correctRefractometer,
    example: [{ brix: 15, celsius: 12 }],
  },
  {
    id: "gravity/originalPlatoFromBrix",
    words:
      "The extract of unfermented wort from a refractometer. Maltose and dextrins bend light a little more than sucrose, so the reading is divided by a factor of the instrument, found against a hydrometer; 1.04 is common. It says nothing of beer, in which alcohol bends light too.",
    equation: "°P = °Bx / correction",
    inputs: [{ at: "0.brix", label: "Reading", ...REFRACTOMETER_RANGE.brix }, correction],
    gives: "extract, °P",
    sources: ["trade-practice"],
    validRange: "0 to 38 °Bx, factors of 0.95 to 1.1, results up to 35 °P.",
    call: originalPlatoFromBrix,
    example: [{ brix: 12.48, correction: 1.04 }],
  },
  {
    id: "gravity/finalGravityFromBrix",
    words:
      "An estimate of the gravity of beer from two refractometer readings, of wort and of beer, by a cubic fitted to measured beers. It is within 0.002 as a rule, good for asking whether the beer is nearly done. Before bottling use a hydrometer: 0.002 of gravity that still ferment are a whole volume of gas too much.",
    equation:
      "SG = 1 − 0.0044993 i + 0.011774 f + 0.00027581 i² − 0.0012717 f² − 0.00000728 i³ + 0.000063293 f³, i and f readings over the correction",
    inputs: [
      { at: "0.originalBrix", label: "Reading of the wort", ...FINAL_BRIX_RANGE },
      { at: "0.finalBrix", label: "Reading of the beer", unit: "°Bx", min: 0, max: ORIGINAL_BRIX },
      correction,
    ],
    gives: "specific gravity 20/20",
    sources: ["terrill-2011"],
    validRange: "Wort of 8 to 30 °Bx over the correction, beer not above it.",
    call: finalGravityFromBrix,
    example: [{ originalBrix: ORIGINAL_BRIX, finalBrix: FINAL_BRIX, correction: 1 }],
  },
];
