import { OutOfRangeError, requireInRange, type Range } from "../errors";
import type { Ambient, Equipment, Figure } from "./equipment";
import * as equipmentNumbers from "./equipment-numbers";
import type { FigureField, Figures } from "./equipment-numbers";
import type { Recipe } from "./recipe";
import * as recipeNumbers from "./recipe-numbers";
import type { NumberField, Numbers, Process } from "./recipe-numbers";

/**
 * Refuses a brew that holds anything but numbers in their ranges, before a loop or a root runs on it.
 *
 * @throws {@link OutOfRangeError} naming the first number that is outside its range.
 */
export function requireBrew(a: {
  readonly recipe: Recipe;
  readonly equipment: Equipment;
  readonly ambient: Ambient;
}): void {
  requireRecipe(a.recipe);
  requireEquipment(a.equipment);
  requireAmbient(a.ambient);
}

/**
 * Refuses a recipe that holds anything but numbers in their ranges.
 *
 * @throws {@link OutOfRangeError} naming the first number that is outside its range.
 */
export function requireRecipe(recipe: Recipe): void {
  requireNumbers(recipe, recipeNumbers.VOLUME_NUMBERS);
  requireProcess(recipe);
  for (const row of recipe.fermentables) {
    requireNumbers(row, recipeNumbers.FERMENTABLE_NUMBERS);
    if (row.acidity !== null) requireNumbers(row.acidity, recipeNumbers.ACIDITY_NUMBERS);
  }
  for (const hop of recipe.hops) requireNumbers(hop, recipeNumbers.HOP_NUMBERS);
  const { source, salts, acid } = recipe.water;
  requireNumbers(source, recipeNumbers.SOURCE_NUMBERS);
  for (const weight of Object.values(salts)) requireInRange("salt", weight, recipeNumbers.SALT_RANGE);
  if (acid !== null) requireNumbers(acid, recipeNumbers.ACID_NUMBERS);
}

/**
 * Refuses mash, boil, stand, yeast or packaging that hold anything but numbers in their ranges.
 *
 * @throws {@link OutOfRangeError} naming the first number that is outside its range.
 */
export function requireProcess(process: Process): void {
  requireNumbers(process, recipeNumbers.PROCESS_NUMBERS);
  if (!Number.isInteger(process.mashes)) {
    throw new OutOfRangeError("number of mashes", process.mashes, recipeNumbers.MASHES_RANGE);
  }
  for (const step of process.mash) requireNumbers(step, recipeNumbers.MASH_STEP_NUMBERS);
  if (process.stand !== null) requireNumbers(process.stand, recipeNumbers.STAND_NUMBERS);
  requireNumbers(process.yeast, recipeNumbers.YEAST_NUMBERS);
  requireNumbers(process.packaging, recipeNumbers.PACKAGING_NUMBERS);
}

/**
 * Refuses equipment that holds anything but numbers in their ranges.
 *
 * @throws {@link OutOfRangeError} naming the first number that is outside its range.
 */
export function requireEquipment(equipment: Equipment): void {
  const { kettle, mash, lauter, chiller, fermenter } = equipment;
  requireNumbers(equipment, equipmentNumbers.EQUIPMENT_NUMBERS);
  requireFigures(equipment, equipmentNumbers.EQUIPMENT_FIGURES);
  requireNumbers(kettle, equipmentNumbers.KETTLE_NUMBERS);
  requireFigures(kettle, equipmentNumbers.KETTLE_FIGURES);
  requireNumbers(mash, equipmentNumbers.MASH_VESSEL_NUMBERS);
  requireNumbers(lauter, equipmentNumbers.LAUTER_NUMBERS);
  requireFigures(lauter, equipmentNumbers.LAUTER_FIGURES);
  requireNumbers(chiller, equipmentNumbers.CHILLER_NUMBERS);
  requireFigures(chiller, equipmentNumbers.CHILLER_FIGURES);
  requireNumbers(fermenter, equipmentNumbers.FERMENTER_NUMBERS);
  requireFigures(fermenter, equipmentNumbers.FERMENTER_FIGURES);
}

/**
 * Refuses surroundings that hold anything but numbers in their ranges.
 *
 * @throws {@link OutOfRangeError} naming the first number that is outside its range.
 */
export function requireAmbient(ambient: Ambient): void {
  requireNumbers(ambient, equipmentNumbers.AMBIENT_NUMBERS);
}

/**
 * Holds the numbers of one part against their ranges; null stands for what the part does not have.
 *
 * @throws {@link OutOfRangeError} naming the first number that is outside its range.
 */
export function requireNumbers<T extends object>(of: T, numbers: Numbers<T>): void {
  for (const number of numbers) {
    // The table names only fields that hold a number or null.
    const value = of[number[0] as NumberField<T>] as number | null;
    if (value !== null) requireInRange(number[1], value, number[2]);
  }
}

function requireFigures<T extends object>(of: T, figures: Figures<T>): void {
  for (const [field, label, range] of figures) {
    // The table names only fields that hold a figure.
    const { value, sd } = of[field as FigureField<T>] as Figure<number>;
    requireInRange(label, value, range);
    if (!(sd >= 0 && sd <= range.max)) throw new OutOfRangeError(`${label}, uncertainty`, sd, sdRange(range));
  }
}

const sdRange = ({ unit, max }: Range): Range => ({ unit, min: 0, max });
