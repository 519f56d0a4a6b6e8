"use client";

import { entryMeasure } from "@/lib/model/order/entered";
import type { OrderItem } from "@/lib/model/order/order";
import type { Preferences } from "@/lib/model/preferences";
import { ActionForm } from "@/lib/ui/action-form";
import { SubmitButton } from "@/lib/ui/submit-button";
import type { OrderAction } from "../../order-action";
import { OfferFields } from "./offer-fields";

interface OfferFormProps {
  readonly item: OrderItem;
  readonly currency: string;
  readonly preferences: Preferences;
  readonly action: OrderAction;
}

/** A pack that a supplier offers. */
export function OfferForm({ item, currency, preferences, action }: OfferFormProps) {
  return (
    <section aria-labelledby="offer">
      <h2 id="offer" className="mb-2">
        Offer a pack
      </h2>
      <p className="mb-2 text-muted">A lower price for a larger amount is another pack.</p>
      <ActionForm key={item.offers.length} action={action}>
        {({ errors, isPending }) => (
          <>
            <OfferFields measure={entryMeasure(item)} {...{ currency, preferences, errors }} />
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
