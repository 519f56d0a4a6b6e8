import { buildRunSheet, replanRunSheet, SPREAD_RANGE, USUAL_SPREAD } from "../../runsheet";
import { celsius, minutes } from "../../units";
import { equipmentInputs, recipeInputs } from "./brew-inputs";
import { EXAMPLE_EQUIPMENT, EXAMPLE_LEDGER, EXAMPLE_RECIPE } from "./example-brew";
import type { FunctionInput, FunctionRecord } from "./function-record";

const DAY = { ledger: EXAMPLE_LEDGER, recipe: EXAMPLE_RECIPE, equipment: EXAMPLE_EQUIPMENT };

const SHEET = buildRunSheet(DAY);

/** Weighed and filled in 25 minutes, heating for 30 more. */
const FILLED_MIN = 25;
const NOW_MIN = 55;
const READ_MIN = 50;

const spread = (family: keyof typeof USUAL_SPREAD, label: string): FunctionInput => ({
  at: `0.spread.${family}`,
  label,
  ...SPREAD_RANGE,
});

/** How the functions of the run sheet are explained. */
export const RUNSHEET_FUNCTIONS: readonly FunctionRecord[] = [
  {
    id: "runsheet/buildRunSheet",
    words:
      "The brew day as a list: what to weigh, fill, heat, add, wait for and measure, each with its time, the temperature and volume to expect, the power to set and the caution where it matters. Times are the ledger's: heating from power and losses, chilling from the chiller, and handwork as it is usual. Additions stand by the end of the boil, and the watch over the foam lies around its beginning. It follows the cautions and the local code, and takes the place of neither.",
    equation: "start of a step = end of the one before; start of an addition = end of the boil − its minutes",
    inputs: [...recipeInputs("0.recipe"), ...equipmentInputs("0.equipment")],
    gives: "steps in order of time, minutes from the start of the day",
    sources: ["energy-balance", "trade-practice"],
    validRange: "Any ledger of brew, with its own recipe and equipment.",
    call: buildRunSheet,
    example: [DAY],
  },
  {
    id: "runsheet/replanRunSheet",
    words:
      'The rest of a brew day planned anew from what has really happened, with an interval for every time: "pitch at 16:40, ± 15 min". Steps follow each other, a rest begins at its temperature, the boil at the boil, and additions hang on its real end. Heating and chilling are stretched by the pace of those that are over, and a temperature read in a ramp tells when it arrives. Boils, rests and stands are as long as they are set. Additions whose time is over are named.',
    equation:
      "pace = (1/s² + Σ planned · took / σ²) / (1/s² + Σ planned² / σ²); end of a ramp = now + (to − read) · minutes / (read − from); interval = mean ± 1.2816 √(Σ hands² + (heating · s_h)² + (chilling · s_c)²)",
    inputs: [
      { at: "0.nowMin", label: "Now, from the start of the day", ...minutes.range, min: READ_MIN },
      { at: "0.steps.0.startMin", label: "Start of a step on the sheet", ...minutes.range },
      { at: "0.steps.0.minutes", label: "Length of a step", ...minutes.range },
      { at: "0.done.1.startMin", label: "Real start of a step", unit: "min", min: 0, max: FILLED_MIN },
      { at: "0.done.1.endMin", label: "Real end of a step", unit: "min", min: 10, max: NOW_MIN },
      { at: "0.readings.0.atMin", label: "When a temperature was read", unit: "min", min: 0, max: NOW_MIN },
      { at: "0.readings.0.celsius", label: "Temperature read", ...celsius.range },
      spread("heating", "Relative standard uncertainty of heating"),
      spread("cooling", "Relative standard uncertainty of chilling"),
      spread("hands", "Relative standard uncertainty of handwork"),
    ],
    gives:
      "the steps that are left with start and end, additions missed, time of pitching and end of the day, min; or that the ramp does not heat",
    sources: ["energy-balance", "gelman-2013", "jcgm-100-2008", "trade-practice"],
    validRange: "Days of up to 1 000 000 minutes; it knows the kettle and not the brewer.",
    call: replanRunSheet,
    example: [
      {
        steps: SHEET,
        done: [
          { step: "weigh-out-1", startMin: 0, endMin: 10 },
          { step: "fill-1", startMin: 10, endMin: FILLED_MIN },
          { step: "heat-strike-water-1", startMin: FILLED_MIN, endMin: null },
        ],
        nowMin: NOW_MIN,
        readings: [{ atMin: READ_MIN, celsius: 58 }],
        spread: USUAL_SPREAD,
      },
    ],
  },
];
