"use client";

import type { Tasting } from "@/lib/model/tasting/tasting";
import { ActionForm } from "@/lib/ui/action-form";
import { SubmitButton } from "@/lib/ui/submit-button";
import type { TastingAction } from "../../form-result";
import { TastingFields } from "../../tasting-fields";

interface ChangeTastingFormProps {
  readonly tasting: Pick<Tasting, "title" | "heldOn" | "note">;
  readonly lockVersion: number;
  readonly action: TastingAction;
}

/** Changes what everybody reads of a tasting. */
export function ChangeTastingForm({ tasting, lockVersion, action }: ChangeTastingFormProps) {
  return (
    <ActionForm action={action}>
      {({ errors, isPending }) => (
        <>
          <input type="hidden" name="lockVersion" value={lockVersion} />
          <TastingFields title={tasting.title} heldOn={tasting.heldOn} note={tasting.note} errors={errors} />
          <div>
            <SubmitButton pending="Saving…" isPending={isPending}>
              Save title, day and note
            </SubmitButton>
          </div>
        </>
      )}
    </ActionForm>
  );
}
