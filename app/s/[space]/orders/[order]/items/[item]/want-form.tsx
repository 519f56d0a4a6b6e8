"use client";

import type { OrderItem, OrderWish } from "@/lib/model/order/order";
import { entryUnit } from "@/lib/model/order/entered";
import { ActionForm } from "@/lib/ui/action-form";
import { NumberField } from "@/lib/ui/number-field";
import { SubmitButton } from "@/lib/ui/submit-button";
import type { OrderAction } from "../../order-action";
import { typedText } from "../../typed-text";

interface WantFormProps {
  readonly item: OrderItem;
  readonly wish: OrderWish | null;
  readonly action: OrderAction;
}

/** What the reader wants of it beside their sheets. */
export function WantForm({ item, wish, action }: WantFormProps) {
  const { unit, factor } = entryUnit(item);
  return (
    <section aria-labelledby="want">
      <h2 id="want" className="mb-2">
        What I want beside my sheets
      </h2>
      <ActionForm key={wish?.lockVersion ?? 0} action={action}>
        {({ errors, isPending }) => (
          <>
            <input type="hidden" name="lockVersion" value={wish?.lockVersion ?? 0} />
            <input type="hidden" name="factor" value={factor} />
            <NumberField
              name="amount"
              label="Amount I want beside"
              unit={unit}
              hint="0 takes it back."
              defaultValue={typedText(wish?.amount ?? 0, factor)}
              error={errors.amount}
            />
            <div>
              <SubmitButton pending="Saving…" isPending={isPending} kind="quiet">
                Save my wish
              </SubmitButton>
            </div>
          </>
        )}
      </ActionForm>
    </section>
  );
}
