import type { FieldErrors } from "@/lib/model/field-errors";
import type { IngredientKind } from "@/lib/model/ingredient-kinds";
import { ON_HAND_FIELDS } from "@/lib/model/ingredient-fields";
import type { Preferences } from "@/lib/model/preferences";
import { fieldUnit } from "@/lib/ui/read-field";
import { TextField } from "@/lib/ui/text-field";
import { FigureInputs } from "../figure-inputs";
import { LOT_INPUTS } from "../form-inputs";
import { NotesField } from "../notes-field";

interface LotFieldsProps {
  readonly kind: IngredientKind;
  /** What the controls begin with, by their names. */
  readonly values: Readonly<Record<string, unknown>>;
  /** Names of the kind that the program and the club know. */
  readonly names: readonly string[];
  readonly errors: FieldErrors;
  readonly preferences: Preferences;
}

/** What is asked of a lot, new or changed. */
export function LotFields({ kind, values, names, errors, preferences }: LotFieldsProps) {
  const text = (name: string): string => (typeof values[name] === "string" ? values[name] : "");
  const of = (name: string) => ({ name, defaultValue: text(name), error: errors[name], autoComplete: "off" });
  return (
    <>
      <div className="grid items-end gap-x-6 gap-y-4 sm:grid-cols-2">
        <TextField {...of("name")} label="Ingredient" hint="As recipes name it." maxLength={80} list="known-names" />
        <TextField {...of("label")} label="Label" hint="Which one it is: harvest, sack, packet." maxLength={80} />
      </div>
      <datalist id="known-names">
        {names.map((name) => (
          <option key={name} value={name} />
        ))}
      </datalist>
      <FigureInputs inputs={LOT_INPUTS[kind]} {...{ values, errors, preferences }} />
      <div className="grid items-end gap-x-6 gap-y-4 sm:grid-cols-2">
        <TextField {...of("bestBefore")} label="Best before" hint="May stay empty." type="date" />
        <TextField {...of("price")} label="Price" hint="May stay empty." inputMode="decimal" maxLength={20} />
        <TextField {...of("currency")} label="Currency" hint="Three letters, such as EUR." maxLength={3} />
        <TextField
          {...of("priceFor")}
          label={`Price for, ${fieldUnit(ON_HAND_FIELDS[kind], preferences)}`}
          hint="For how much the price is."
        />
      </div>
      <NotesField value={values.notes} error={errors.notes} />
    </>
  );
}
