import { SelectField } from "@/lib/ui/select-field";
import { Field } from "@/lib/ui/field";
import { controlAttributes } from "@/lib/ui/field-ids";
import { SubmitButton } from "@/lib/ui/submit-button";

interface FileFieldsProps {
  readonly kettles: readonly { readonly id: string; readonly label: string }[];
  readonly isReading: boolean;
}

const FILE_HINT = "BeerJSON or BeerXML, at most 2 MB and 500 recipes.";
const KETTLE_HINT = "Whose amounts they are. The efficiency in a file is a result, and says little of another kettle.";

/** The file, or its text, and the kettle that its amounts are for. */
export function FileFields({ kettles, isReading }: FileFieldsProps) {
  return (
    <>
      <Field name="file" label="File" hint={FILE_HINT}>
        <input
          type="file"
          accept=".json,.xml,application/json,application/xml,text/xml"
          className="input"
          {...controlAttributes({ name: "file", hint: FILE_HINT })}
        />
      </Field>
      <Field name="text" label="Or its text">
        <textarea rows={4} className="input" spellCheck={false} {...controlAttributes({ name: "text" })} />
      </Field>
      <SelectField
        name="kettle"
        label="Written for"
        hint={KETTLE_HINT}
        options={[
          { value: "", text: "A typical kettle, worked out from the file" },
          ...kettles.map(({ id, label }) => ({ value: id, text: label })),
        ]}
      />
      <SubmitButton pending="Reading…" isPending={isReading} kind="quiet">
        Show what would be taken
      </SubmitButton>
    </>
  );
}
