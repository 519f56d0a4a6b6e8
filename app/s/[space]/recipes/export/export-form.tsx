import { Fragment } from "react";
import { EXPORT_KINDS, KINDS_OF_FILE } from "@/lib/model/exchange/export-file";
import type { ExportReport } from "@/lib/model/exchange/export-report";
import { ErrorSummary } from "@/lib/ui/error-summary";
import { fieldIds } from "@/lib/ui/field-ids";
import { SelectField } from "@/lib/ui/select-field";
import { KeptFields } from "./kept-fields";
import type { RefusedExport } from "./read-refused";

interface ExportFormProps {
  readonly action: string;
  readonly recipes: readonly {
    readonly id: string;
    readonly title: string;
    /** null where it came out of no file. */
    readonly report: ExportReport | null;
  }[];
  /** What the last request lacked; null where the form is opened anew, with every recipe chosen. */
  readonly refused: RefusedExport | null;
}

const FORMATS = EXPORT_KINDS.map((value) => ({ value, text: KINDS_OF_FILE[value].label }));

/** Which recipes go into one file. A plain form: the answer is the file, or this form again with what was wrong. */
export function ExportForm({ action, recipes, refused }: ExportFormProps) {
  const { control, error } = fieldIds("recipe");
  const wrong = refused?.errors.recipe;
  return (
    <form action={action} method="get" className="flex flex-col items-start gap-4">
      <ErrorSummary errors={refused?.errors ?? {}} />
      <fieldset
        id={control}
        tabIndex={-1}
        className={wrong === undefined ? "field" : "field field-invalid"}
        {...(wrong === undefined ? {} : { "aria-describedby": error })}
      >
        <legend className="mb-2 font-semibold">Recipes</legend>
        {wrong === undefined ? null : (
          <p className="field-error" id={error}>
            <span className="sr-only">Error: </span>
            {wrong}
          </p>
        )}
        {recipes.map(({ id, title, report }) => (
          <Fragment key={id}>
            <label className="check-line">
              <input
                type="checkbox"
                name="recipe"
                value={id}
                defaultChecked={refused?.chosen.has(id) ?? true}
                aria-describedby={report === null ? undefined : `kept-${id}`}
              />
              {title}
            </label>
            {report === null ? null : <KeptFields id={`kept-${id}`} title={title} report={report} />}
          </Fragment>
        ))}
      </fieldset>
      <SelectField
        name="format"
        label="Format"
        options={FORMATS}
        defaultValue={refused?.format}
        error={refused?.errors.format}
        hint="2.06 is read most widely; 3.0 leaves out fields that are not in the standard."
      />
      <button type="submit" className="button">
        Download the file
      </button>
    </form>
  );
}
