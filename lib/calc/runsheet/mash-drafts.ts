import { HANDLING } from "../ledger/handling";
import { acidAmount, fermentableAmounts, saltAmounts, waterAmount, waterShare, weighedAmounts } from "./amounts";
import { infusionLitres } from "./infusion-litres";
import { measurable, plainStep, type PlannedPhase, type RunSheetInput, type StepDraft } from "./step-drafts";

/** Weighing and filling share the time that the ledger gives to preparing; common practice, no source. */
const WEIGHING_SHARE = 1 / 2;

/**
 * Makes the steps before the heater goes on: weigh out, then fill with the first mash water.
 *
 * @returns Two steps.
 */
export function prepareSteps(a: RunSheetInput, phase: PlannedPhase): StepDraft[] {
  const weighing = phase.minutes * WEIGHING_SHARE;
  const step = plainStep(phase);
  const mashL = a.ledger.quantities["water.mash"] ?? 0;
  // Where water follows later, the reading of this fill would not be the mash water.
  const all = Math.abs(phase.litres - mashL) < 1e-9 * mashL;
  return [
    { ...step, name: "weigh out", minutes: weighing, celsius: null, litres: null, amounts: weighedAmounts(a) },
    {
      ...step,
      name: "fill",
      startMin: phase.startMin + weighing,
      minutes: phase.minutes - weighing,
      amounts: strikeAmounts(a, phase.litres),
      measure: all ? ["water.mash"] : [],
      cautions: acidCaution(a),
    },
  ];
}

// The strike water, with the salts and the acid of the water that this mash gets in all.
function strikeAmounts(a: RunSheetInput, litres: number): StepDraft["amounts"] {
  const mashL = (a.ledger.quantities["water.mash"] ?? 0) / a.recipe.mashes;
  return [
    ...waterAmount("Mash water", litres),
    ...saltAmounts(a, waterShare(a, mashL)),
    ...acidAmount(a, 1 / a.recipe.mashes),
  ];
}

const acidCaution = ({ recipe }: RunSheetInput): StepDraft["cautions"] =>
  recipe.water.acid !== null && recipe.water.acid.ml > 0 ? ["acid"] : [];

/**
 * Makes the step that heats the strike water; a later mash fills the kettle again first.
 *
 * @returns One step.
 */
export function strikeSteps(a: RunSheetInput, phase: PlannedPhase): StepDraft[] {
  const amounts = phase.mash === 0 ? [] : strikeAmounts(a, phase.litres);
  const acid = phase.mash === 0 ? [] : acidCaution(a);
  return [{ ...plainStep(phase), amounts, cautions: ["mains", "hot liquor", ...acid] }];
}

/**
 * Makes the step that stirs the grist in, once the strike temperature has been read.
 *
 * @returns One step.
 */
export function doughInSteps(a: RunSheetInput, phase: PlannedPhase): StepDraft[] {
  const measure = measurable(a.ledger, "water.strike");
  return [{ ...plainStep(phase), amounts: fermentableAmounts(a, "mash"), measure }];
}

/**
 * Makes a rest, with the boiling water that leads to it where the mash cannot be heated.
 *
 * @returns One step.
 */
export function restSteps(a: RunSheetInput, phase: PlannedPhase): StepDraft[] {
  return [{ ...plainStep(phase), amounts: waterAmount("Boiling water", infusionLitres(a, phase)) }];
}

/**
 * Makes the step that drains the grain; the first wort is measured before sparge water thins it.
 *
 * @returns One step.
 */
export function drainSteps(a: RunSheetInput, phase: PlannedPhase): StepDraft[] {
  const lifted = a.equipment.mash.kind !== "tun";
  const measure = measurable(a.ledger, "mash.firstWort");
  const sparged = (a.ledger.quantities["water.sparge"] ?? 0) > 0;
  const litres = sparged ? null : runOffLitres(a, phase);
  return [{ ...plainStep(phase), litres, measure, cautions: [lifted ? "hot basket" : "hot liquor"] }];
}

/**
 * Makes the step that washes the grain.
 *
 * @returns One step.
 */
export function spargeSteps(a: RunSheetInput, phase: PlannedPhase): StepDraft[] {
  const spargeL = (a.ledger.quantities["water.sparge"] ?? 0) / a.recipe.mashes;
  return [
    {
      ...plainStep(phase),
      celsius: HANDLING.spargeC,
      litres: runOffLitres(a, phase),
      amounts: [...waterAmount("Sparge water", spargeL), ...saltAmounts(a, waterShare(a, spargeL))],
      cautions: ["hot liquor"],
    },
  ];
}

// Wort that has run off by the end of this mash, L at 20 °C.
function runOffLitres({ ledger, recipe }: RunSheetInput, { mash }: PlannedPhase): number | null {
  const all = ledger.quantities["lauter.runOff"];
  return all === null ? null : (all * (mash + 1)) / recipe.mashes;
}
