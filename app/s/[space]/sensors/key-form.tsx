"use client";

import type { ActionResult } from "@/lib/model/action-result";
import { KEY_DAYS } from "@/lib/model/sensor/sensor-token";
import { ActionForm } from "@/lib/ui/action-form";
import { NumberField } from "@/lib/ui/number-field";
import { SelectField } from "@/lib/ui/select-field";
import { SubmitButton } from "@/lib/ui/submit-button";
import { TextField } from "@/lib/ui/text-field";
import { NewKey } from "./new-key";

type Made = ActionResult<{ readonly token: string }>;

interface KeyFormProps {
  readonly brews: readonly { readonly id: string; readonly title: string }[];
  /** The brew that the page was opened from. */
  readonly brewId: string;
  readonly action: (previous: Made | null, form: FormData) => Promise<Made>;
}

/** Makes a key for a sensor and shows it, once. */
export function KeyForm({ brews, brewId, action }: KeyFormProps) {
  const options = [
    { value: "", text: "Every brew that I write to" },
    ...brews.map(({ id, title }) => ({ value: id, text: title })),
  ];
  return (
    <ActionForm action={action}>
      {({ errors, result, isPending }) => (
        <>
          {result?.status === "ok" && !isPending ? <NewKey token={result.data.token} /> : null}
          <TextField
            name="name"
            label="Name"
            hint="So that you know it again: “Probe in the blue fermenter”."
            autoComplete="off"
            error={errors.name}
          />
          <SelectField name="brewId" label="Posts to" options={options} defaultValue={brewId} error={errors.brewId} />
          <NumberField
            name="days"
            label="Expires after"
            unit="days"
            defaultValue={String(KEY_DAYS.usual)}
            error={errors.days}
          />
          <div>
            <SubmitButton pending="Making…" isPending={isPending}>
              Make a key
            </SubmitButton>
          </div>
        </>
      )}
    </ActionForm>
  );
}
