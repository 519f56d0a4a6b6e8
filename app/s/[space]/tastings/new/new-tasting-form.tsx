"use client";

import { ActionForm } from "@/lib/ui/action-form";
import { SelectField, type SelectFieldProps } from "@/lib/ui/select-field";
import { SubmitButton } from "@/lib/ui/submit-button";
import type { TastingAction } from "../form-result";
import { TastingFields } from "../tasting-fields";

interface NewTastingFormProps {
  readonly stewards: SelectFieldProps["options"];
  readonly ownId: string;
  readonly sharedBrews: SelectFieldProps["options"];
  readonly action: TastingAction;
}

/** What the tasting is called, who prepares it, and which shared brew it follows. */
export function NewTastingForm({ stewards, ownId, sharedBrews, action }: NewTastingFormProps) {
  return (
    <ActionForm action={action}>
      {({ errors, isPending }) => (
        <>
          <TastingFields title="" heldOn={null} note="" errors={errors} />
          <SelectField
            name="stewardId"
            label="Steward"
            hint="Enters and pours the beers, knows all of them and judges none. This does not change later."
            options={stewards}
            defaultValue={ownId}
            error={errors.stewardId}
          />
          <SelectField
            name="sharedBrewId"
            label="After a shared brew"
            hint="Everybody sees this: it says which beers may be among the entries, not which is which."
            options={[{ value: "", text: "None" }, ...sharedBrews]}
            defaultValue=""
            error={errors.sharedBrewId}
          />
          <div>
            <SubmitButton pending="Making…" isPending={isPending}>
              Make the tasting
            </SubmitButton>
          </div>
        </>
      )}
    </ActionForm>
  );
}
