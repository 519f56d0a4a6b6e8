"use client";

import type { ActionResult } from "@/lib/model/action-result";
import { AS_WRITTEN } from "@/lib/model/shared-brew-rules";
import { ActionForm } from "@/lib/ui/action-form";
import { SelectField } from "@/lib/ui/select-field";
import { SubmitButton } from "@/lib/ui/submit-button";
import { TextField } from "@/lib/ui/text-field";
import { PlanFields } from "../plan-fields";
import type { RecipeChoice } from "./recipe-choices";

interface SharedBrewFormProps {
  readonly choices: readonly RecipeChoice[];
  readonly chosen: string;
  readonly action: (previous: ActionResult<void> | null, form: FormData) => Promise<ActionResult<void>>;
}

/** Which recipe the club brews, under which title, on which days and by which rules. */
export function SharedBrewForm({ choices, chosen, action }: SharedBrewFormProps) {
  return (
    <ActionForm action={action}>
      {({ errors, isPending }) => (
        <>
          <SelectField name="recipe" label="Recipe" options={choices} defaultValue={chosen} error={errors.recipe} />
          <TextField
            name="title"
            label="Title"
            hint="What the club calls it, such as “Spring pale ale”."
            maxLength={160}
            autoComplete="off"
            error={errors.title}
          />
          <PlanFields window={null} rules={AS_WRITTEN} errors={errors} />
          <div>
            <SubmitButton pending="Calling…" isPending={isPending}>
              Call the shared brew
            </SubmitButton>
          </div>
        </>
      )}
    </ActionForm>
  );
}
