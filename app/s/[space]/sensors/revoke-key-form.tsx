"use client";

import type { ActionResult } from "@/lib/model/action-result";
import type { SensorKey } from "@/lib/model/sensor/sensor-token";
import { ActionForm } from "@/lib/ui/action-form";
import { SubmitButton } from "@/lib/ui/submit-button";

interface RevokeKeyFormProps {
  readonly sensor: Pick<SensorKey, "id" | "name">;
  readonly action: (previous: ActionResult<void> | null, form: FormData) => Promise<ActionResult<void>>;
}

/** Ends a key; whatever still posts with it is refused at once. */
export function RevokeKeyForm({ sensor, action }: RevokeKeyFormProps) {
  return (
    <ActionForm action={action}>
      {({ isPending }) => (
        <>
          <input type="hidden" name="id" value={sensor.id} />
          <SubmitButton pending="Ending…" isPending={isPending} kind="attention">
            Revoke<span className="sr-only"> the key of {sensor.name}</span>
          </SubmitButton>
        </>
      )}
    </ActionForm>
  );
}
