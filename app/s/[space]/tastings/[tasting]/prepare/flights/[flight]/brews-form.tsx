"use client";

import type { Candidate } from "@/lib/server/tastings/candidates";
import { ActionForm } from "@/lib/ui/action-form";
import { CheckboxField } from "@/lib/ui/checkbox-field";
import { SubmitButton } from "@/lib/ui/submit-button";
import type { TastingAction } from "../../../../form-result";
import { FlightSeen, type FlightAsSeen } from "./flight-seen";

interface BrewsFormProps {
  readonly seen: FlightAsSeen;
  readonly brews: readonly Candidate[];
  readonly sharedBrewId: string | null;
  readonly action: TastingAction;
}

/** Chooses brews that are in package; those of the tasting's shared brew are chosen from the start. */
export function BrewsForm({ seen, brews, sharedBrewId, action }: BrewsFormProps) {
  if (brews.length === 0) {
    return <p className="text-muted">No brew is in package that is not entered already.</p>;
  }
  return (
    <ActionForm action={action}>
      {({ isPending }) => (
        <>
          <FlightSeen {...seen} />
          <div>
            {brews.map(({ id, title, brewerName, sharedBrewTitle, sharedBrewId: own }) => (
              <CheckboxField
                key={id}
                name={`brew.${id}`}
                defaultChecked={own !== null && own === sharedBrewId}
                label={`${title}, ${brewerName}${sharedBrewTitle === null ? "" : ` (${sharedBrewTitle})`}`}
              />
            ))}
          </div>
          <div>
            <SubmitButton pending="Entering…" isPending={isPending}>
              Enter them under blind codes
            </SubmitButton>
          </div>
        </>
      )}
    </ActionForm>
  );
}
