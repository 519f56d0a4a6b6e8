"use client";

import { SERVING_RANGE } from "@/lib/calc/judging";
import { FLIGHT_KIND_WORDS, FLIGHT_KINDS } from "@/lib/model/tasting/tasting";
import { ActionForm } from "@/lib/ui/action-form";
import { NumberField } from "@/lib/ui/number-field";
import { SelectField } from "@/lib/ui/select-field";
import { SubmitButton } from "@/lib/ui/submit-button";
import { TextField } from "@/lib/ui/text-field";
import type { TastingAction } from "../../form-result";

interface NewFlightFormProps {
  readonly lockVersion: number;
  readonly action: TastingAction;
}

const KINDS = FLIGHT_KINDS.map((value) => ({ value, text: FLIGHT_KIND_WORDS[value] }));

/** Adds a flight: what is tasted together. */
export function NewFlightForm({ lockVersion, action }: NewFlightFormProps) {
  const { min, max } = SERVING_RANGE.palateLimit;
  return (
    <ActionForm action={action}>
      {({ errors, isPending }) => (
        <>
          <input type="hidden" name="lockVersion" value={lockVersion} />
          <TextField
            name="flightTitle"
            label="Name of the flight"
            hint="Such as “Pale ales”. Judges read it, so it names no brewer. Beers of a kind belong together."
            maxLength={160}
            autoComplete="off"
            error={errors.title}
          />
          <SelectField
            name="kind"
            label="Kind"
            hint="A triangle or duo-trio test asks whether two beers can be told apart at all."
            options={KINDS}
            error={errors.kind}
          />
          <NumberField
            name="palateLimit"
            label="Most entries for one palate"
            unit=""
            hint={`${String(min)} to ${String(max)}; empty where everybody tastes all. Eight to twelve is usual for one sitting.`}
            error={errors.palateLimit}
          />
          <div>
            <SubmitButton pending="Adding…" isPending={isPending}>
              Add the flight
            </SubmitButton>
          </div>
        </>
      )}
    </ActionForm>
  );
}
