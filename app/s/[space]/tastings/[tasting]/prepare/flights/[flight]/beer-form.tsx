"use client";

import { ActionForm } from "@/lib/ui/action-form";
import { NumberField } from "@/lib/ui/number-field";
import { SubmitButton } from "@/lib/ui/submit-button";
import { TextField } from "@/lib/ui/text-field";
import type { TastingAction } from "../../../../form-result";
import { FlightSeen, type FlightAsSeen } from "./flight-seen";

interface BeerFormProps {
  readonly seen: FlightAsSeen;
  readonly action: TastingAction;
}

const FIGURES = [
  { name: "originalGravity", label: "Original gravity", unit: "SG" },
  { name: "finalGravity", label: "Final gravity", unit: "SG" },
  { name: "alcohol", label: "Alcohol by volume", unit: "%" },
  { name: "bitterness", label: "Bitterness", unit: "IBU" },
  { name: "colour", label: "Colour", unit: "EBC" },
] as const;

/** Enters a beer that is not in the club's log, by its name and what its brewer knows of it. */
export function BeerForm({ seen, action }: BeerFormProps) {
  return (
    <ActionForm action={action}>
      {({ errors, isPending }) => (
        <>
          <FlightSeen {...seen} />
          <TextField name="beerName" label="Beer" maxLength={160} autoComplete="off" error={errors.beerName} />
          <TextField
            name="brewerName"
            label="Brewer"
            hint="May stay empty."
            maxLength={120}
            autoComplete="off"
            error={errors.brewerName}
          />
          <fieldset className="grid gap-4 sm:grid-cols-2">
            <legend className="mb-2 font-semibold">Figures, as far as they are known</legend>
            {FIGURES.map(({ name, label, unit }) => (
              <NumberField key={name} name={name} label={label} unit={unit} error={errors[`figures.${name}`]} />
            ))}
          </fieldset>
          <div>
            <SubmitButton pending="Entering…" isPending={isPending}>
              Enter it under a blind code
            </SubmitButton>
          </div>
        </>
      )}
    </ActionForm>
  );
}
