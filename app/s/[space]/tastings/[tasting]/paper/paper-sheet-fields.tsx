import { descriptorName, DESCRIPTOR_IDS } from "@/lib/model/tasting/descriptors";
import type { FieldErrors } from "@/lib/model/field-errors";
import { LONGEST_PART_NOTE, partMaximum, SHEET_PART_NAMES, SHEET_PARTS } from "@/lib/model/tasting/sheet";
import { descriptorField, noteField, pointsField } from "@/lib/model/tasting/sheet-paper";
import { CheckboxField } from "@/lib/ui/checkbox-field";
import { NumberField } from "@/lib/ui/number-field";
import { TextField } from "@/lib/ui/text-field";

/** Points, notes and words of a sheet on paper. */
export function PaperSheetFields({ errors }: { readonly errors: FieldErrors }) {
  return (
    <>
      {SHEET_PARTS.map((part) => (
        <div key={part} className="grid grid-cols-1 gap-2">
          <NumberField
            name={pointsField(part)}
            label={`Points for ${SHEET_PART_NAMES[part].toLowerCase()}`}
            unit={`0 to ${String(partMaximum(part))}`}
            error={errors[pointsField(part)]}
          />
          <TextField
            name={noteField(part)}
            label={`Notes on ${SHEET_PART_NAMES[part].toLowerCase()}`}
            maxLength={LONGEST_PART_NOTE}
            error={errors[noteField(part)]}
          />
        </div>
      ))}
      <details>
        <summary className="target">What the judge found</summary>
        <p className="text-muted">On paper a word is ticked or not; a tick counts as clear.</p>
        <div className="grid grid-cols-2 gap-x-4 sm:grid-cols-3">
          {DESCRIPTOR_IDS.map((word) => (
            <CheckboxField
              key={word}
              name={descriptorField(word)}
              label={descriptorName(word)}
              defaultChecked={false}
            />
          ))}
        </div>
      </details>
    </>
  );
}
