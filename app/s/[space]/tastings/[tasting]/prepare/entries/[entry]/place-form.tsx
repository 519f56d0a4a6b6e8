"use client";

import { ActionForm } from "@/lib/ui/action-form";
import { SelectField, type SelectFieldProps } from "@/lib/ui/select-field";
import { SubmitButton } from "@/lib/ui/submit-button";
import type { TastingAction } from "../../../../form-result";

interface PlaceFormProps {
  readonly seen: { readonly lockVersion: number; readonly entryNo: number };
  readonly flights: SelectFieldProps["options"];
  readonly flightNo: number;
  readonly styles: SelectFieldProps["options"];
  readonly styleCode: string;
  readonly action: TastingAction;
}

/** Says as what an entry is judged, and in which flight. */
export function PlaceForm({ seen, flights, flightNo, styles, styleCode, action }: PlaceFormProps) {
  return (
    <ActionForm action={action}>
      {({ errors, isPending }) => (
        <>
          <input type="hidden" name="lockVersion" value={seen.lockVersion} />
          <input type="hidden" name="entryNo" value={seen.entryNo} />
          <SelectField
            name="styleCode"
            label="Judged as"
            hint="Judges see the style. The nearest by numbers come first."
            options={styles}
            defaultValue={styleCode}
            error={errors.styleCode}
          />
          <SelectField
            name="flightNo"
            label="Flight"
            options={flights}
            defaultValue={String(flightNo)}
            error={errors.flightNo}
          />
          <div>
            <SubmitButton pending="Saving…" isPending={isPending}>
              Save style and flight
            </SubmitButton>
          </div>
        </>
      )}
    </ActionForm>
  );
}
