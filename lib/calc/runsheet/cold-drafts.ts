import { waterAmount } from "./amounts";
import { measurable, plainStep, type PlannedPhase, type RunSheetInput, type StepDraft } from "./step-drafts";

/**
 * Makes the steps at the fermenter: the wort runs in and is measured there before the yeast follows.
 *
 * @returns Two steps.
 */
export function transferSteps(a: RunSheetInput, phase: PlannedPhase): StepDraft[] {
  const { yeast, topUp } = a.recipe;
  const cells = a.ledger.quantities["fermenter.cells"];
  const transfer = plainStep(phase);
  return [
    { ...transfer, amounts: waterAmount("Water after the boil", topUp), cautions: ["glass"] },
    {
      ...transfer,
      name: "pitch",
      startMin: phase.startMin + phase.minutes,
      minutes: 0,
      // The chiller may stop short of it; then the fermenter cools the rest before the yeast goes in.
      celsius: yeast.celsius,
      amounts: cells === null ? [] : [{ name: yeast.name, value: cells, unit: "billion cells" }],
      measure: measurable(a.ledger, "fermenter.volume", "fermenter.originalExtract"),
      cautions: ["closed room", "pressure"],
    },
  ];
}

/**
 * Makes the last step of the day.
 *
 * @returns One step.
 */
export function cleanSteps(_: RunSheetInput, phase: PlannedPhase): StepDraft[] {
  return [{ ...plainStep(phase), celsius: null, cautions: ["cleaner"] }];
}
