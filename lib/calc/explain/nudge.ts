import type { Equipment, Figure, Recipe } from "../ledger";
import type { QuantityMaker } from "../units";
import type { BrewInput } from "./explanation-context";

/** One thing changed; null where this brew has no such thing, or the change would leave what is possible. */
export type Nudge = (brew: BrewInput) => BrewInput | null;

/**
 * Makes a quantity if it is possible.
 *
 * @returns The quantity, or null outside the range of its unit.
 */
export function possible<U extends string>(make: QuantityMaker<U>, value: number): ReturnType<QuantityMaker<U>> | null {
  return value >= make.range.min && value <= make.range.max ? make(value) : null;
}

/**
 * Changes some of the recipe.
 *
 * @returns The nudge; `change` gives null where it does not apply.
 */
export function ofRecipe(change: (recipe: Recipe) => Partial<Recipe> | null): Nudge {
  return (brew) => {
    const part = change(brew.recipe);
    return part === null ? null : { ...brew, recipe: { ...brew.recipe, ...part } };
  };
}

/**
 * Changes some figures of one part of the equipment.
 *
 * @returns The nudge; `change` gives null where it does not apply.
 */
export function ofPart<P extends "kettle" | "lauter" | "chiller" | "fermenter">(
  part: P,
  change: (of: Equipment[P]) => Partial<Equipment[P]> | null,
): Nudge {
  return (brew) => {
    const { equipment } = brew;
    const changed = change(equipment[part]);
    return changed === null
      ? null
      : { ...brew, equipment: { ...equipment, [part]: { ...equipment[part], ...changed } } };
  };
}

/**
 * Gives a figure another value.
 *
 * @returns The figure, or null outside the range of its unit.
 */
export function moved<U extends string>(
  of: Figure<ReturnType<QuantityMaker<U>>>,
  make: QuantityMaker<U>,
  value: number,
): Figure<ReturnType<QuantityMaker<U>>> | null {
  const made = possible(make, value);
  return made === null ? null : { ...of, value: made };
}
