import type { FieldErrors } from "@/lib/model/field-errors";
import type { EntryMeasure } from "@/lib/model/order/entered";
import type { Preferences } from "@/lib/model/preferences";
import { NumberField } from "@/lib/ui/number-field";
import { entryUnit } from "@/lib/ui/order/entry";
import { TextField } from "@/lib/ui/text-field";

interface OfferFieldsProps {
  readonly measure: EntryMeasure;
  readonly currency: string;
  readonly preferences: Preferences;
  readonly errors: FieldErrors;
  readonly values?: { readonly size: string; readonly price: string; readonly note: string };
}

/** What is asked of a pack, new or changed. */
export function OfferFields({ measure, currency, preferences, errors, values }: OfferFieldsProps) {
  return (
    <>
      <input type="hidden" name="measure" value={measure} />
      <input type="hidden" name="currency" value={currency} />
      <div className="flex flex-wrap gap-4">
        <NumberField
          name="size"
          label="Pack size"
          unit={entryUnit(measure, preferences)}
          defaultValue={values?.size}
          error={errors.size}
        />
        <NumberField
          name="price"
          label="Price"
          unit={currency}
          defaultValue={values?.price}
          error={errors.price ?? errors.priceMinor}
        />
      </div>
      <TextField
        name="note"
        label="Note of the supplier"
        hint="Who sells it, or the order number; may stay empty."
        maxLength={200}
        autoComplete="off"
        defaultValue={values?.note}
        error={errors.note}
      />
    </>
  );
}
