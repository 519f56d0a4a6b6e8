import { SelectField } from "@/lib/ui/select-field";
import type { RevisionChoice } from "./revision-choices";

interface CompareFormProps {
  readonly choices: readonly RevisionChoice[];
  readonly chosen: { readonly from: string; readonly to: string };
  readonly named: { readonly from: string; readonly to: string };
}

/** Which two texts are compared; the choice belongs to the address. */
export function CompareForm({ choices, chosen, named }: CompareFormProps) {
  // A text that the address names and the list does not have stays chosen.
  const withChosen = (end: "from" | "to") =>
    choices.some(({ value }) => value === chosen[end])
      ? choices
      : [{ value: chosen[end], text: named[end] }, ...choices];
  return (
    <form className="no-print mb-6 flex flex-wrap items-end gap-4">
      <SelectField
        name="from"
        label="Before"
        options={withChosen("from")}
        defaultValue={chosen.from}
        key={chosen.from}
      />
      <SelectField
        name="to"
        label="After"
        options={withChosen("to")}
        defaultValue={chosen.to}
        key={`to ${chosen.to}`}
      />
      <button type="submit" className="button button-quiet">
        Compare
      </button>
    </form>
  );
}
