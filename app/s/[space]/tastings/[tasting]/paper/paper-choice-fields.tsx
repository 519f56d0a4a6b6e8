import type { FieldErrors } from "@/lib/model/field-errors";
import type { ServedFlight } from "@/lib/model/tasting/judge-sheet";
import { LONGEST_PART_NOTE } from "@/lib/model/tasting/sheet";
import { SelectField } from "@/lib/ui/select-field";
import { TextField } from "@/lib/ui/text-field";

interface PaperChoiceFieldsProps {
  readonly flight: ServedFlight;
  readonly errors: FieldErrors;
}

/** The glass that a judge chose on paper. */
export function PaperChoiceFields({ flight, errors }: PaperChoiceFieldsProps) {
  const glasses = flight.kind === "duo-trio" ? flight.glasses.slice(1) : flight.glasses;
  return (
    <>
      <SelectField
        name="glassNo"
        label={flight.kind === "duo-trio" ? "Glass like the reference" : "Odd glass"}
        error={errors["glassNo"]}
        options={[
          { value: "", text: "choose" },
          ...glasses.map((glassNo) => ({ value: String(glassNo), text: String(glassNo) })),
        ]}
      />
      <TextField name="note" label="Note" maxLength={LONGEST_PART_NOTE} error={errors["note"]} />
    </>
  );
}
