import { z } from "zod";
import { ingredientChange, newIngredient } from "@/lib/model/ingredient";
import type { IngredientKind } from "@/lib/model/ingredient-kinds";
import type { Preferences } from "@/lib/model/preferences";
import { INGREDIENT_INPUTS } from "./form-inputs";
import { flatForm, typedInputs } from "./typed";

type Values = Readonly<Record<string, unknown>>;

/** The form of a new ingredient of a kind. */
export function newIngredientForm(kind: IngredientKind, preferences: Preferences) {
  return flatForm(shapeOf(kind, preferences), (values) => described(kind, values), newIngredient);
}

/** The form that changes one. */
export function ingredientChangeForm(kind: IngredientKind, preferences: Preferences) {
  const shape = { ...shapeOf(kind, preferences), id: z.string(), lockVersion: z.string() };
  return flatForm(
    shape,
    ({ id, lockVersion, ...values }) => ({ id, lockVersion, ...described(kind, values) }),
    ingredientChange,
  );
}

function shapeOf(kind: IngredientKind, preferences: Preferences) {
  return { name: z.string(), notes: z.string(), ...typedInputs(INGREDIENT_INPUTS[kind], preferences) };
}

function described(kind: IngredientKind, { name, notes, ...figures }: Values) {
  return { name, notes, what: { kind, figures: kind === "fermentable" ? withAcidity(figures) : figures } };
}

/** The three figures of acidity go together: none of them, or all. */
function withAcidity({ distilledWaterPh, buffering, lacticFraction, ...figures }: Values) {
  const all = { distilledWaterPh, buffering, lacticFraction };
  const isUnknown = Object.values(all).every((value) => value === null);
  return { ...figures, acidity: isUnknown ? null : all };
}
