import type { HopAddition, Phase } from "../ledger";
import { fermentableAmounts } from "./amounts";
import { measurable, plainStep, type PlannedPhase, type RunSheetInput, type StepDraft } from "./step-drafts";

/** How long before and after the first bubbles the foam wants watching, minutes; common practice, no source. */
const HOT_BREAK_WATCH = { before: 5, after: 5 } as const;

/**
 * Makes the step that heats the wort, and the watch over its foam.
 *
 * @returns Two steps; the watch lies over the end of the one and the beginning of the boil.
 */
export function heatToBoilSteps(a: RunSheetInput, phase: PlannedPhase): StepDraft[] {
  const measure = measurable(a.ledger, "kettle.preBoilGravity");
  const boil = a.ledger.phases.find(({ name }) => name === "boil");
  const before = Math.min(HOT_BREAK_WATCH.before, phase.minutes);
  const after = Math.min(HOT_BREAK_WATCH.after, boil?.minutes ?? 0);
  const heat: StepDraft = { ...plainStep(phase), litres: a.ledger.quantities["kettle.preBoil"], measure };
  return [
    heat,
    {
      ...heat,
      name: "hot-break watch",
      startMin: phase.startMin + phase.minutes - before,
      minutes: before + after,
      measure: [],
      cautions: ["boil-over"],
    },
  ];
}

/**
 * Makes the boil with its additions; each stands where its minutes before the end fall.
 *
 * @returns The boil, then one step for each addition.
 */
export function boilSteps(a: RunSheetInput, phase: PlannedPhase): StepDraft[] {
  const boil: StepDraft = {
    ...plainStep(phase),
    litres: a.ledger.quantities["kettle.preBoil"],
    amounts: fermentableAmounts(a, "kettle"),
    measure: measurable(a.ledger, "kettle.preBoil", "kettle.heatingTime"),
  };
  // Without a stand, what was meant for it goes in at flame-out.
  const additions = a.recipe.hops.flatMap((hop) => {
    if (hop.use === "boil") return [addition(hop, hop.minutes, phase)];
    return hop.use === "stand" && a.recipe.stand === null ? [addition(hop, 0, phase)] : [];
  });
  return [boil, ...additions];
}

/**
 * Makes the hop stand with its additions.
 *
 * @returns The stand, then one step for each addition.
 */
export function standSteps(a: RunSheetInput, phase: PlannedPhase): StepDraft[] {
  const stand: StepDraft = { ...afterBoil(a, phase), celsius: phase.fromC };
  const hops = a.recipe.hops.filter(({ use }) => use === "stand");
  return [stand, ...hops.map((hop) => addition(hop, hop.minutes, phase))];
}

/**
 * Makes a stretch of cooling.
 *
 * @returns One step.
 */
export function coolSteps(a: RunSheetInput, phase: PlannedPhase): StepDraft[] {
  return [{ ...afterBoil(a, phase), cautions: ["hot liquor"] }];
}

function afterBoil(a: RunSheetInput, phase: PlannedPhase): StepDraft {
  const measure = phase.afterBoil ? measurable(a.ledger, "kettle.postBoil") : [];
  return { ...plainStep(phase), litres: a.ledger.quantities["kettle.postBoil"], measure };
}

function addition(hop: HopAddition, beforeEndMin: number, phase: Phase): StepDraft {
  return {
    name: "hop addition",
    startMin: phase.startMin + Math.max(0, phase.minutes - beforeEndMin),
    minutes: 0,
    celsius: phase.fromC,
    litres: null,
    powerW: null,
    amounts: [{ name: hop.name, value: hop.grams, unit: "g" }],
    measure: [],
    cautions: [],
  };
}
