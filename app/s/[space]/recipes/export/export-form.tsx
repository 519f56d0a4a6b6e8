import { EXPORT_KINDS, KINDS_OF_FILE } from "@/lib/model/exchange/export-file";
import { SelectField } from "@/lib/ui/select-field";

interface ExportFormProps {
  readonly action: string;
  readonly recipes: readonly { readonly id: string; readonly title: string }[];
}

const FORMATS = EXPORT_KINDS.map((value) => ({ value, text: KINDS_OF_FILE[value].label }));

/** Which recipes go into one file. A plain form: the answer is the file. */
export function ExportForm({ action, recipes }: ExportFormProps) {
  return (
    <form action={action} method="get" className="flex flex-col items-start gap-4">
      <fieldset>
        <legend className="mb-2 font-semibold">Recipes</legend>
        {recipes.map(({ id, title }) => (
          <label key={id} className="check-line">
            <input type="checkbox" name="recipe" value={id} defaultChecked />
            {title}
          </label>
        ))}
      </fieldset>
      <SelectField
        name="format"
        label="Format"
        options={FORMATS}
        hint="2.06 is read most widely; 3.0 leaves out fields that are not in the standard."
      />
      <button type="submit" className="button">
        Download the file
      </button>
    </form>
  );
}
