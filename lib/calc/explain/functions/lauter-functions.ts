import { PORTIONS_RANGE, runOff } from "../../lauter";
import { fraction, kilograms, litres } from "../../units";
import { fieldInput } from "./field-input";
import type { FunctionRecord } from "./function-record";

const MASH = { wort: 29, extract: 4, retained: 5, sparge: 10, method: "batch", bypass: 0.1, portions: 2 };

/** How the functions of lautering are explained. */
export const LAUTER_FUNCTIONS: readonly FunctionRecord[] = [
  {
    id: "lauter/runOff",
    words:
      "What runs off a mash and what the grain keeps, without sparging or washed in one of three ways: batches stirred in, water trickling through a lifted basket as through a stirred vessel, or a flooded bed in which one layer washes the next. A share of the water runs past the grain and washes nothing. The efficiency is a result: a fuller basket keeps more wort and has less water to wash it. A lifted basket is heavy and drips hot wort: lift with a hoist or a second pair of hands.",
    equation:
      "none: E₀ = extract × kept / wort; batch: E = E₀ × kept / (kept + water), each portion; pour-over: E = E₀ e^(−S/V); continuous: E = E₀ e^(−t) (3 + 2 t + t²/2) / 3 with t = 3 S/V",
    inputs: [
      fieldInput("wort", "Wort in the mash", { ...kilograms.range, min: MASH.extract }),
      fieldInput("extract", "Extract in it", { unit: "kg", min: 0, max: MASH.wort }),
      fieldInput("retained", "Wort kept by grain and dead space", litres.range),
      fieldInput("sparge", "Sparge water", kilograms.range),
      fieldInput("bypass", "Share that runs past", fraction.range),
      fieldInput("portions", "Portions of a batch sparge, whole", PORTIONS_RANGE),
    ],
    gives:
      "run-off and what is kept, kg, the extract in each, kg, and the lauter efficiency; or that the grain holds all",
    sources: ["mass-balance", "trade-practice"],
    validRange: "Extract up to the mass of the wort; worts past 35 °P are weighed with the density at 35 °P.",
    call: runOff,
    example: [MASH],
  },
];
