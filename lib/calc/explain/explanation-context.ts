import type { Ambient, Equipment, Ledger, Recipe } from "../ledger";
import { gristSums, type GristSums } from "../ledger/grist-sums";
import { requireBrew } from "../ledger/require-brew";

/** What was brewed, on what, on which day. */
export interface BrewInput {
  readonly recipe: Recipe;
  readonly equipment: Equipment;
  readonly ambient: Ambient;
}

/** A ledger with all that it was computed from. */
export interface ExplanationContext extends BrewInput {
  readonly ledger: Ledger;
  readonly sums: GristSums;
}

/**
 * Puts a ledger beside what it was computed from.
 *
 * @throws {@link OutOfRangeError} when a number of recipe, equipment or day is outside its range.
 * @returns The context that every record reads its inputs from.
 */
export function explanationContext(a: BrewInput & { readonly ledger: Ledger }): ExplanationContext {
  const { ledger, recipe, equipment, ambient } = a;
  requireBrew(a);
  return { ledger, recipe, equipment, ambient, sums: gristSums(recipe, equipment) };
}

/**
 * Tells whether sparge water has a part in this brew.
 *
 * @returns False without a sparge, without a thickness that holds water back, and without grist.
 */
export function sparges({ recipe, equipment, sums }: ExplanationContext): boolean {
  return equipment.lauter.method !== "none" && recipe.thickness !== null && sums.gristKg > 0;
}
