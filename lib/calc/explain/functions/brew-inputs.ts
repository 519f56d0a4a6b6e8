import * as equipmentNumbers from "../../ledger/equipment-numbers";
import type { Figures } from "../../ledger/equipment-numbers";
import * as recipeNumbers from "../../ledger/recipe-numbers";
import type { Numbers } from "../../ledger/recipe-numbers";
import type { FunctionInput } from "./function-record";

/**
 * Lists the numbers of one part of a brew; the library checks them by these same tables.
 *
 * @returns One input for each number.
 */
export function numbersAt<T>(at: string, numbers: Numbers<T>): readonly FunctionInput[] {
  return numbers.map(([field, label, range]) => ({ at: `${at}.${field}`, label: asTitle(label), ...range }));
}

function figuresAt<T>(at: string, figures: Figures<T>): readonly FunctionInput[] {
  return figures.flatMap(([field, label, range]) => [
    { at: `${at}.${field}.value`, label: asTitle(label), ...range },
    { at: `${at}.${field}.sd`, label: `${asTitle(label)}, uncertainty`, ...range, min: 0 },
  ]);
}

const asTitle = (label: string): string => label.charAt(0).toUpperCase() + label.slice(1);

/**
 * Lists the numbers of mash, boil, stand, yeast and packaging.
 *
 * @param at - Where the recipe or the intention stands among the arguments.
 * @returns One input for each number; rows by the first of them.
 */
export function processInputs(at: string): readonly FunctionInput[] {
  return [
    ...numbersAt(at, recipeNumbers.PROCESS_NUMBERS),
    ...numbersAt(`${at}.mash.0`, recipeNumbers.MASH_STEP_NUMBERS),
    ...numbersAt(`${at}.stand`, recipeNumbers.STAND_NUMBERS),
    ...numbersAt(`${at}.yeast`, recipeNumbers.YEAST_NUMBERS),
    ...numbersAt(`${at}.packaging`, recipeNumbers.PACKAGING_NUMBERS),
  ];
}

/**
 * Lists the numbers of a recipe.
 *
 * @param at - Where the recipe stands among the arguments.
 * @returns One input for each number; rows by the first of them.
 */
export function recipeInputs(at: string): readonly FunctionInput[] {
  return [
    ...numbersAt(at, recipeNumbers.VOLUME_NUMBERS),
    ...processInputs(at),
    ...numbersAt(`${at}.fermentables.0`, recipeNumbers.FERMENTABLE_NUMBERS),
    ...numbersAt(`${at}.fermentables.0.acidity`, recipeNumbers.ACIDITY_NUMBERS),
    ...numbersAt(`${at}.hops.0`, recipeNumbers.HOP_NUMBERS),
    ...numbersAt(`${at}.water.source`, recipeNumbers.SOURCE_NUMBERS),
    { at: `${at}.water.salts.gypsum`, label: "Gypsum", ...recipeNumbers.SALT_RANGE },
    ...numbersAt(`${at}.water.acid`, recipeNumbers.ACID_NUMBERS),
  ];
}

/**
 * Lists the numbers of one member's equipment, with their uncertainties.
 *
 * @param at - Where the equipment stands among the arguments.
 * @returns One input for each number.
 */
export function equipmentInputs(at: string): readonly FunctionInput[] {
  return [
    ...numbersAt(at, equipmentNumbers.EQUIPMENT_NUMBERS),
    ...figuresAt(at, equipmentNumbers.EQUIPMENT_FIGURES),
    ...numbersAt(`${at}.kettle`, equipmentNumbers.KETTLE_NUMBERS),
    ...figuresAt(`${at}.kettle`, equipmentNumbers.KETTLE_FIGURES),
    ...numbersAt(`${at}.mash`, equipmentNumbers.MASH_VESSEL_NUMBERS),
    ...numbersAt(`${at}.lauter`, equipmentNumbers.LAUTER_NUMBERS),
    ...figuresAt(`${at}.lauter`, equipmentNumbers.LAUTER_FIGURES),
    ...numbersAt(`${at}.chiller`, equipmentNumbers.CHILLER_NUMBERS),
    ...figuresAt(`${at}.chiller`, equipmentNumbers.CHILLER_FIGURES),
    ...numbersAt(`${at}.fermenter`, equipmentNumbers.FERMENTER_NUMBERS),
    ...figuresAt(`${at}.fermenter`, equipmentNumbers.FERMENTER_FIGURES),
  ];
}

/**
 * Lists the numbers of a brew day.
 *
 * @param at - Where the day stands among the arguments.
 * @returns One input for each number.
 */
export function ambientInputs(at: string): readonly FunctionInput[] {
  return numbersAt(at, equipmentNumbers.AMBIENT_NUMBERS);
}

/** Everything that a function over the whole process takes as its first argument's `recipe`, `equipment` and `ambient`. */
export const BREW_INPUTS: readonly FunctionInput[] = [
  ...recipeInputs("0.recipe"),
  ...equipmentInputs("0.equipment"),
  ...ambientInputs("0.ambient"),
];
