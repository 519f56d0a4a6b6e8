import type { BrewSummary, Prediction } from "./brew";

/** One batch in the register: its original extract, planned and measured, °P. */
export interface BrewRegisterEntry extends BrewSummary {
  readonly plannedOriginal: Prediction | null;
  readonly measuredOriginal: number | null;
}
