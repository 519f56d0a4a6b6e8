"use client";

import type { PreparedFlight } from "@/lib/server/tastings/preparation";
import { ActionForm } from "@/lib/ui/action-form";
import { NumberField } from "@/lib/ui/number-field";
import { SubmitButton } from "@/lib/ui/submit-button";
import { TextField } from "@/lib/ui/text-field";
import type { TastingAction } from "../../../../form-result";
import { FlightSeen, type FlightAsSeen } from "./flight-seen";

interface ChangeFlightFormProps {
  readonly seen: FlightAsSeen;
  readonly flight: Pick<PreparedFlight, "title" | "palateLimit">;
  readonly action: TastingAction;
}

/** Renames a flight, or says how many entries one palate takes. */
export function ChangeFlightForm({ seen, flight, action }: ChangeFlightFormProps) {
  return (
    <ActionForm action={action}>
      {({ errors, isPending }) => (
        <>
          <FlightSeen {...seen} />
          <TextField
            name="title"
            label="Name of the flight"
            maxLength={160}
            autoComplete="off"
            defaultValue={flight.title}
            error={errors.title}
          />
          <NumberField
            name="palateLimit"
            label="Most entries for one palate"
            unit=""
            hint="Empty where everybody tastes all."
            defaultValue={flight.palateLimit ?? ""}
            error={errors.palateLimit}
          />
          <div>
            <SubmitButton pending="Saving…" isPending={isPending}>
              Save name and limit
            </SubmitButton>
          </div>
        </>
      )}
    </ActionForm>
  );
}
