"use client";

import type { OrderItem } from "@/lib/model/order/order";
import { ActionForm } from "@/lib/ui/action-form";
import { NumberField } from "@/lib/ui/number-field";
import { SelectField } from "@/lib/ui/select-field";
import { SubmitButton } from "@/lib/ui/submit-button";
import type { OrderAction } from "../../order-action";

interface Choice {
  readonly value: string;
  readonly text: string;
}

interface SubstitutionFormProps {
  readonly item: OrderItem;
  readonly others: readonly Choice[];
  readonly forWhom: readonly Choice[];
  readonly action: OrderAction;
}

/** Proposes another item in place of this one; it counts once the member agrees. */
export function SubstitutionForm({ item, others, forWhom, action }: SubstitutionFormProps) {
  return (
    <section aria-labelledby="substitute">
      <h2 id="substitute" className="mb-2">
        Replace it for somebody
      </h2>
      <ActionForm action={action}>
        {({ errors, result, isPending }) => (
          <>
            <SelectField name="userId" label="For whom" options={forWhom} error={errors.userId} />
            <SelectField name="toItemId" label={`In place of ${item.name}`} options={others} error={errors.toItemId} />
            <NumberField
              name="ratio"
              label="Amount of it for each 1"
              unit=""
              hint="1 for as much; a weaker hop takes more."
              defaultValue="1"
              error={errors.ratio}
            />
            <div>
              <SubmitButton pending="Proposing…" isPending={isPending} kind="quiet">
                Propose
              </SubmitButton>
            </div>
            {result?.status === "ok" && !isPending ? (
              <p role="status">Proposed. It counts once the member agrees, on the page of the order.</p>
            ) : null}
          </>
        )}
      </ActionForm>
    </section>
  );
}
