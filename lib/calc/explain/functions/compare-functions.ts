import {
  compareLedger,
  differenceCauses,
  meterEnergy,
  RECONCILIATION_RANGE,
  reconcile,
  reconcileLinear,
} from "../../compare";
import { rangeOf } from "../../compare/latest-readings";
import { intervals } from "../../ledger";
import { kilowattHours } from "../../units";
import { EXAMPLE_BREW, EXAMPLE_LEDGER } from "./example-brew";
import type { FunctionInput, FunctionRecord } from "./function-record";

const READINGS = [
  { quantity: "kettle.preBoil", value: 26, sd: 0.3 },
  { quantity: "kettle.preBoilGravity", value: 10.4, sd: 0.25 },
  { quantity: "kettle.postBoil", value: 23.5, sd: 0.3 },
  { quantity: "fermenter.volume", value: 19.2, sd: 0.3 },
  { quantity: "fermenter.originalExtract", value: 11.7, sd: 0.25 },
  { quantity: "fermenter.finalExtract", value: 2.4, sd: 0.25 },
] as const;

const reading = (i: keyof typeof READINGS & `${number}`, label: string): FunctionInput[] => {
  const { quantity } = READINGS[i];
  const range = rangeOf(quantity);
  return [
    { at: `0.readings.${i}.value`, label, ...range },
    { at: `0.readings.${i}.sd`, label: `${label}, standard uncertainty`, ...range, min: 0 },
  ];
};

/** How the functions that hold a brew against its plan are explained. */
export const COMPARE_FUNCTIONS: readonly FunctionRecord[] = [
  {
    id: "compare/compareLedger",
    words:
      "What was planned beside what was measured, station by station, with what follows from the readings: efficiencies, losses, attenuation, alcohol and where the extract went. Readings are weighed by their uncertainties against the balances of mass and extract, and the one that cannot be right is named. A reading without a stated uncertainty counts as usual for its instrument. It cannot tell two wrong readings that agree with each other from two right ones.",
    equation: "least Σ ((reconciled − read) / σ)² with in = lost + out for mass and extract",
    inputs: [
      ...reading("0", "Volume before the boil"),
      ...reading("1", "Gravity before the boil"),
      ...reading("5", "Final gravity"),
    ],
    gives: "rows in the order of the process, the account of the extract, kg, and suspects",
    sources: ["mass-balance", "narasimhan-jordache-2000", "balling-1865"],
    validRange: "Gravities of wort from 0 to 35 °P, of beer from −9 °P.",
    call: compareLedger,
    example: [{ ledger: EXAMPLE_LEDGER, intervals: intervals(EXAMPLE_BREW), readings: READINGS }],
  },
  {
    id: "compare/differenceCauses",
    words:
      "How far original gravity, volume, final gravity and alcohol came out from the plan, divided among the stations. The figures that the readings settle on take the place of the planned ones, station by station, averaged over all orders, so that the parts add up. Each part has the uncertainty that plan and readings leave to it; a part below twice its uncertainty is not named as a cause. It cannot tell apart what no reading lies between: without a reading of the first wort, mash and lauter are named together.",
    equation: "part of a station = mean over all orders of (number with its figures as settled − number before)",
    inputs: [
      ...reading("0", "Volume before the boil"),
      ...reading("1", "Gravity before the boil"),
      ...reading("5", "Final gravity"),
    ],
    gives:
      "for each number that was read the parts of its difference, in its unit, and which of them are told from nothing",
    sources: ["shapley-1953", "mass-balance", "narasimhan-jordache-2000", "balling-1865"],
    validRange: "Gravities of wort from 0 to 35 °P, of beer from −9 °P.",
    call: differenceCauses,
    example: [{ ledger: EXAMPLE_LEDGER, intervals: intervals(EXAMPLE_BREW), readings: READINGS }],
  },
  {
    id: "compare/meterEnergy",
    words:
      "The electricity of a brew day from a meter that was read at its start and at its end: the last reading less the first. Readings between them only say whether the meter ran on; one that runs back gives no answer. Whatever else hangs on the same meter is in it.",
    equation: "E = last − first; s² = s(last)² + s(first)²",
    inputs: [
      { at: "0.0.value", label: "Meter at the start", ...kilowattHours.range },
      { at: "0.0.sd", label: "Meter at the start, standard uncertainty", ...kilowattHours.range },
      { at: "0.1.value", label: "Meter at the end", ...kilowattHours.range },
      { at: "0.1.sd", label: "Meter at the end, standard uncertainty", ...kilowattHours.range },
    ],
    gives: "energy and its standard uncertainty, kWh; or why there is none",
    sources: ["jcgm-100-2008"],
    validRange: "Up to 1000 readings from 0 to 1 000 000 kWh.",
    call: meterEnergy,
    example: [
      [
        { value: 8041.2, sd: 0.05 },
        { value: 8048.7, sd: 0.05 },
      ],
    ],
  },
  {
    id: "compare/reconcile",
    words:
      "The readings of one brew and the figures of its kettle, moved as little as their uncertainties ask until every balance of water and extract closes. It says how far each reading had to move and whether chance alone would do that, names the reading that cannot be right with the value that it should have had, follows the extract from the grist to the beer, and finds which one reading more would decide most. It takes uncertainties as independent, and grist and sugar as weighed out: a sack weighed wrong looks like a mash that dissolved otherwise.",
    equation:
      "minimise Σ ((x − read) / σ)² + Σ ((figure − planned) / σ)² with in = lost + out; extract in = Σ lost + left in the beer",
    inputs: [
      ...reading("0", "Volume before the boil"),
      ...reading("1", "Gravity before the boil"),
      ...reading("5", "Final gravity"),
    ],
    gives:
      "reconciled values with uncertainties and z, χ² with its probability, suspects, the account of the extract, kg, and the next reading",
    sources: ["narasimhan-jordache-2000", "mass-balance", "balling-1865", "kalman-1960"],
    validRange: "Gravities of wort from 0 to 35 °P, of beer from −9 °P.",
    call: reconcile,
    example: [{ ledger: EXAMPLE_LEDGER, intervals: intervals(EXAMPLE_BREW), readings: READINGS }],
  },
  {
    id: "compare/reconcileLinear",
    words:
      "Measured values adjusted as little as their uncertainties ask until balances that must hold do hold. It tells how improbable the whole set is and which value had to move furthest for its uncertainty. The balances must be straight lines, and the errors independent and normal; a single gross error spoils its neighbours, which is why it is looked for.",
    equation: "minimise Σ ((x − y) / σ)² subject to A x = b; χ² of the sum on as many degrees as independent balances",
    inputs: [
      { at: "0.measured.0", label: "A measured value", ...RECONCILIATION_RANGE.value },
      { at: "0.sigma.0", label: "Its standard uncertainty", ...RECONCILIATION_RANGE.sigma },
      { at: "0.constraints.0.coefficients.0", label: "Its coefficient in a balance", ...RECONCILIATION_RANGE.value },
      { at: "0.constraints.0.equals", label: "What the balance comes to", ...RECONCILIATION_RANGE.value },
    ],
    gives: "reconciled values and uncertainties, χ², degrees of freedom, probability, and z for each value",
    sources: ["narasimhan-jordache-2000"],
    validRange: "Values to 1e12 in size, uncertainties from 1e-12; balances that do not contradict each other.",
    call: reconcileLinear,
    example: [
      {
        measured: [101.91, 64.45, 34.65],
        sigma: [1, 1, 1],
        constraints: [{ coefficients: [1, -1, -1], equals: 0 }],
      },
    ],
  },
];
