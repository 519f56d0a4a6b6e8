import type { Equipment, Ledger, Phase, PhaseName, QuantityId, Recipe } from "../ledger";
import type { Step } from "./step";

/** Everything the steps are written from. */
export interface RunSheetInput {
  readonly ledger: Ledger;
  readonly recipe: Recipe;
  readonly equipment: Equipment;
}

/** A step before it has an id. */
export type StepDraft = Omit<Step, "id">;

/** A phase with what tells it from others of its name. */
export interface PlannedPhase extends Phase {
  /** Which of the equal mashes it belongs to, from 0. */
  readonly mash: number;
  /** Which rest of that mash, from 0; 0 for phases that are no rest. */
  readonly rest: number;
  /** The step is the first after the boil. */
  readonly afterBoil: boolean;
}

const OF_A_MASH: ReadonlySet<PhaseName> = new Set(["heat strike water", "dough in", "rest", "heat between rests"]);

/**
 * Makes a step that only repeats what its phase says.
 *
 * @returns The step, with nothing to weigh, measure or beware of.
 */
export function plainStep(phase: Phase): StepDraft {
  return {
    name: phase.name,
    startMin: phase.startMin,
    minutes: phase.minutes,
    celsius: phase.toC,
    litres: phase.litres > 0 ? phase.litres : null,
    powerW: phase.powerW > 0 ? phase.powerW : null,
    amounts: [],
    measure: [],
    cautions: [],
  };
}

/**
 * Numbers the mashes and their rests.
 *
 * @returns The phases in the same order.
 */
export function planPhases(phases: readonly Phase[]): PlannedPhase[] {
  let mash = -1;
  let rest = 0;
  let last: PhaseName | null = null;
  return phases.map((phase) => {
    if (phase.name === "heat strike water") {
      mash++;
      rest = -1;
    }
    if (phase.name === "rest") rest++;
    const afterBoil = last === "boil";
    last = phase.name;
    return { ...phase, mash: Math.max(0, mash), rest: OF_A_MASH.has(phase.name) ? Math.max(0, rest) : 0, afterBoil };
  });
}

/**
 * Leaves out what the ledger has no value for: what was not predicted cannot be compared.
 *
 * @returns The quantities that remain.
 */
export function measurable(ledger: Ledger, ...wanted: readonly QuantityId[]): QuantityId[] {
  return wanted.filter((id) => ledger.quantities[id] !== null);
}
