import type { FieldErrors } from "@/lib/model/field-errors";
import type { IngredientKind } from "@/lib/model/ingredient-kinds";
import type { Preferences } from "@/lib/model/preferences";
import { TextField } from "@/lib/ui/text-field";
import { FigureInputs } from "./figure-inputs";
import { INGREDIENT_INPUTS } from "./form-inputs";
import { NotesField } from "./notes-field";

interface IngredientFieldsProps {
  readonly kind: IngredientKind;
  readonly values: Readonly<Record<string, unknown>>;
  readonly errors: FieldErrors;
  readonly preferences: Preferences;
}

/** What is asked of an ingredient, new or changed. */
export function IngredientFields({ kind, values, errors, preferences }: IngredientFieldsProps) {
  const { name, notes } = values;
  return (
    <>
      <TextField
        name="name"
        label="Name"
        hint="As recipes will name it."
        maxLength={80}
        autoComplete="off"
        defaultValue={typeof name === "string" ? name : ""}
        error={errors.name}
      />
      <FigureInputs inputs={INGREDIENT_INPUTS[kind]} {...{ values, errors, preferences }} />
      <NotesField value={notes} error={errors.notes} />
    </>
  );
}
