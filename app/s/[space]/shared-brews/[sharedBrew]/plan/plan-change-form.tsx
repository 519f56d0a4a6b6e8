"use client";

import type { ActionResult } from "@/lib/model/action-result";
import { SHARED_BREW_STATES, type PlanVersion } from "@/lib/model/shared-brew";
import { ActionForm } from "@/lib/ui/action-form";
import { SelectField } from "@/lib/ui/select-field";
import { SubmitButton } from "@/lib/ui/submit-button";
import { TextField } from "@/lib/ui/text-field";
import { PlanFields } from "../../plan-fields";

interface PlanChangeFormProps {
  readonly id: string;
  readonly plan: PlanVersion;
  /** The newest revision of the recipe. */
  readonly headRev: number;
  readonly action: (previous: ActionResult<void> | null, form: FormData) => Promise<ActionResult<void>>;
}

const STATES = { planned: "Planned", open: "Open to join", closed: "Closed", cancelled: "Cancelled" } as const;

/** Another version of a plan, beginning with what the present one says. */
export function PlanChangeForm({ id, plan, headRev, action }: PlanChangeFormProps) {
  const revisions = Array.from({ length: headRev }, (_, i) => ({
    value: String(headRev - i),
    text: `Revision ${headRev - i}`,
  }));
  return (
    <ActionForm action={action}>
      {({ errors, isPending }) => (
        <>
          <input type="hidden" name="id" value={id} />
          <input type="hidden" name="baseVersion" value={plan.version} />
          <SelectField
            name="rev"
            label="Recipe"
            options={revisions}
            defaultValue={String(plan.recipeRev)}
            error={errors.rev}
          />
          <SelectField
            name="state"
            label="State"
            options={SHARED_BREW_STATES.map((value) => ({ value, text: STATES[value] }))}
            defaultValue={plan.state}
            error={errors.state}
          />
          <PlanFields window={plan.window} rules={plan.rules} errors={errors} />
          <TextField
            name="note"
            label="Why it changes"
            hint="Everybody who has joined reads it."
            maxLength={500}
            autoComplete="off"
            error={errors.note}
          />
          <div>
            <SubmitButton pending="Changing…" isPending={isPending}>
              Make version {plan.version + 1} of the plan
            </SubmitButton>
          </div>
        </>
      )}
    </ActionForm>
  );
}
