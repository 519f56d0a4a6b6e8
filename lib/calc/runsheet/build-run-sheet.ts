import type { Equipment, Ledger, PhaseName, Recipe } from "../ledger";
import { requireEquipment, requireRecipe } from "../ledger/require-brew";
import { cleanSteps, transferSteps } from "./cold-drafts";
import { boilSteps, coolSteps, heatToBoilSteps, standSteps } from "./kettle-drafts";
import { doughInSteps, drainSteps, prepareSteps, restSteps, spargeSteps, strikeSteps } from "./mash-drafts";
import type { Step } from "./step";
import { plainStep, planPhases, type PlannedPhase, type RunSheetInput, type StepDraft } from "./step-drafts";

const STEPS_OF: Readonly<Record<PhaseName, (a: RunSheetInput, phase: PlannedPhase) => StepDraft[]>> = {
  prepare: prepareSteps,
  "heat strike water": strikeSteps,
  "dough in": doughInSteps,
  rest: restSteps,
  "heat between rests": (_, phase) => [plainStep(phase)],
  "lift and drain": drainSteps,
  sparge: spargeSteps,
  "heat to the boil": heatToBoilSteps,
  boil: boilSteps,
  "cool to the stand": coolSteps,
  stand: standSteps,
  chill: coolSteps,
  transfer: transferSteps,
  clean: cleanSteps,
};

/**
 * Turns a ledger along time: the day's list of what to weigh, heat, add, wait for and measure.
 *
 * What a step asks to measure is measured when it begins; the strike temperature, for one, at doughing in. Powers are
 * what the heater draws: all of it to ramp, what holds the temperature or the stated boil-off otherwise. Dry hops are
 * not of the brew day.
 *
 * @param a.ledger - The ledger of this recipe on this equipment.
 * @param a.recipe - Amounts for this equipment.
 * @param a.equipment - The kettle.
 * @returns Steps in order of time, minutes from the start of the day; the last one ends when the ledger's day does.
 * @validRange Any ledger that `brew` gives.
 * @throws {@link OutOfRangeError} when a number of the recipe or the equipment is outside its range.
 * @source Times and volumes are the ledger's (docs/sources.md#energy-balance); the order of work is common practice
 * (docs/sources.md#trade-practice)
 * @example
 * buildRunSheet({ ledger, recipe, equipment })[0]; // { id: "weigh-out-1", name: "weigh out", startMin: 0, … }
 */
export function buildRunSheet(a: {
  readonly ledger: Ledger;
  readonly recipe: Recipe;
  readonly equipment: Equipment;
}): readonly Step[] {
  requireRecipe(a.recipe);
  requireEquipment(a.equipment);
  const drafts = planPhases(a.ledger.phases).flatMap((phase) => STEPS_OF[phase.name](a, phase));
  const counts = new Map<string, number>();
  // The sort keeps the order of steps that begin together.
  return drafts
    .sort((one, other) => one.startMin - other.startMin)
    .map((draft) => {
      const count = (counts.get(draft.name) ?? 0) + 1;
      counts.set(draft.name, count);
      return { id: `${draft.name.replaceAll(" ", "-")}-${count}`, ...draft };
    });
}
