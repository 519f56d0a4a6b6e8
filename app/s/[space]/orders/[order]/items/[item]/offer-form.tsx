"use client";

import { entryUnit } from "@/lib/model/order/entered";
import type { OrderItem } from "@/lib/model/order/order";
import { ActionForm } from "@/lib/ui/action-form";
import { NumberField } from "@/lib/ui/number-field";
import { SubmitButton } from "@/lib/ui/submit-button";
import { TextField } from "@/lib/ui/text-field";
import type { OrderAction } from "../../order-action";

interface OfferFormProps {
  readonly item: OrderItem;
  readonly currency: string;
  readonly action: OrderAction;
}

/** A pack that a supplier offers. */
export function OfferForm({ item, currency, action }: OfferFormProps) {
  const { unit, factor } = entryUnit(item);
  return (
    <section aria-labelledby="offer">
      <h2 id="offer" className="mb-2">
        Offer a pack
      </h2>
      <ActionForm key={item.offers.length} action={action}>
        {({ errors, isPending }) => (
          <>
            <input type="hidden" name="factor" value={factor} />
            <input type="hidden" name="currency" value={currency} />
            <div className="flex flex-wrap gap-4">
              <NumberField name="size" label="Pack size" unit={unit} error={errors.size} />
              <NumberField name="price" label="Price" unit={currency} error={errors.price ?? errors.priceMinor} />
            </div>
            <TextField
              name="note"
              label="Note of the supplier"
              hint="Who sells it, or the order number; may stay empty. A lower price for a larger amount is another pack."
              maxLength={200}
              autoComplete="off"
              error={errors.note}
            />
            <div>
              <SubmitButton pending="Adding…" isPending={isPending}>
                Add the pack
              </SubmitButton>
            </div>
          </>
        )}
      </ActionForm>
    </section>
  );
}
