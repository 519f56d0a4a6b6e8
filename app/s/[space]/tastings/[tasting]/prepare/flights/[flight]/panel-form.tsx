"use client";

import type { Person } from "@/lib/server/spaces/reads";
import type { PreparedFlight } from "@/lib/server/tastings/preparation";
import { ActionForm } from "@/lib/ui/action-form";
import { SelectField } from "@/lib/ui/select-field";
import { SubmitButton } from "@/lib/ui/submit-button";
import type { TastingAction } from "../../../../form-result";
import { FlightSeen, type FlightAsSeen } from "./flight-seen";

interface PanelFormProps {
  readonly seen: FlightAsSeen;
  readonly flight: Pick<PreparedFlight, "judges" | "pourers">;
  readonly people: readonly Person[];
  readonly action: TastingAction;
}

const PARTS = [
  { value: "", text: "No part" },
  { value: "judge", text: "Judges" },
  { value: "pourer", text: "Pours" },
] as const;

/** Gives everybody a part in a flight, or none. The steward is not among them. */
export function PanelForm({ seen, flight, people, action }: PanelFormProps) {
  const isIn = (list: readonly { readonly userId: string }[], id: string): boolean =>
    list.some(({ userId }) => userId === id);
  const partOf = (id: string): string => {
    if (isIn(flight.judges, id)) return "judge";
    return isIn(flight.pourers, id) ? "pourer" : "";
  };
  return (
    <ActionForm action={action}>
      {({ isPending }) => (
        <>
          <FlightSeen {...seen} />
          <p className="text-muted">
            Whoever brewed an entry may judge: that entry is kept from them, and everybody else gets as few. Nobody
            pours a flight and judges it as well.
          </p>
          <div className="grid gap-4 sm:grid-cols-2">
            {people.map(({ userId, displayName }) => (
              <SelectField
                key={userId}
                name={`part.${userId}`}
                label={displayName}
                options={PARTS}
                defaultValue={partOf(userId)}
              />
            ))}
          </div>
          <div>
            <SubmitButton pending="Saving…" isPending={isPending}>
              Save the panel
            </SubmitButton>
          </div>
        </>
      )}
    </ActionForm>
  );
}
