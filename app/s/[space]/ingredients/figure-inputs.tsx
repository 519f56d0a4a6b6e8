import type { FieldErrors } from "@/lib/model/field-errors";
import type { Preferences } from "@/lib/model/preferences";
import { NumberField } from "@/lib/ui/number-field";
import { fieldText, fieldUnit } from "@/lib/ui/read-field";
import { SelectField } from "@/lib/ui/select-field";
import { TextField } from "@/lib/ui/text-field";
import type { FormInput } from "./form-inputs";

interface FigureInputsProps {
  readonly inputs: readonly FormInput[];
  /** What the controls begin with, by name. */
  readonly values: Readonly<Record<string, unknown>>;
  readonly errors: FieldErrors;
  readonly preferences: Preferences;
}

/** The controls of a form, two beside each other where there is room. */
export function FigureInputs({ inputs, values, errors, preferences }: FigureInputsProps) {
  return (
    <div className="grid items-end gap-x-6 gap-y-4 sm:grid-cols-2">
      {inputs.map((input) => (
        <FigureInput
          key={input.name}
          input={input}
          value={values[input.name] ?? null}
          error={errors[input.name]}
          preferences={preferences}
        />
      ))}
    </div>
  );
}

function FigureInput(props: {
  readonly input: FormInput;
  readonly value: unknown;
  readonly error: string | undefined;
  readonly preferences: Preferences;
}) {
  const { input, value, error, preferences } = props;
  const { name, isOptional } = input;
  const hint = isOptional ? "May stay empty." : undefined;
  if (input.type === "number") {
    const text = typeof value === "number" ? fieldText(input.field, value, preferences) : "";
    const unit = fieldUnit(input.field, preferences);
    const mayBeNegative = input.field.min < 0;
    return (
      <NumberField {...{ name, unit, hint, error, mayBeNegative }} label={input.field.label} defaultValue={text} />
    );
  }
  const text = typeof value === "string" ? value : "";
  if (input.type === "day")
    return <TextField {...{ name, hint, error }} label={input.label} type="date" defaultValue={text} />;
  const options = isOptional ? [{ value: "", text: "not known" }, ...input.options] : input.options;
  return <SelectField {...{ name, error, options }} label={input.label} defaultValue={text || options[0]?.value} />;
}
