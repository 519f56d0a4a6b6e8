"use client";

import { entryMeasure } from "@/lib/model/order/entered";
import type { OrderItem, OrderOffer } from "@/lib/model/order/order";
import type { Preferences } from "@/lib/model/preferences";
import { majorText } from "@/lib/model/price";
import { ActionForm } from "@/lib/ui/action-form";
import { entryText, entryUnit } from "@/lib/ui/order/entry";
import { SubmitButton } from "@/lib/ui/submit-button";
import type { OrderAction } from "../../order-action";
import { OfferFields } from "./offer-fields";

interface ChangeOfferFormProps {
  readonly item: Pick<OrderItem, "kind" | "unit">;
  readonly offer: OrderOffer;
  readonly currency: string;
  readonly preferences: Preferences;
  readonly action: OrderAction;
}

/** Another size, price or note of a pack, in its row. */
export function ChangeOfferForm({ item, offer, currency, preferences, action }: ChangeOfferFormProps) {
  const measure = entryMeasure(item);
  const size = entryText(measure, offer.size, preferences);
  const values = { size, price: majorText(offer.priceMinor, currency), note: offer.note };
  return (
    <details>
      <summary className="target">
        Change<span className="sr-only">{` the pack of ${size} ${entryUnit(measure, preferences)}`}</span>
      </summary>
      <ActionForm key={offer.lockVersion} action={action}>
        {({ errors, isPending }) => (
          <>
            <input type="hidden" name="offerId" value={offer.id} />
            <input type="hidden" name="lockVersion" value={offer.lockVersion} />
            <OfferFields {...{ measure, currency, preferences, errors, values }} />
            <div>
              <SubmitButton pending="Saving…" isPending={isPending} kind="quiet">
                Save the pack
              </SubmitButton>
            </div>
          </>
        )}
      </ActionForm>
    </details>
  );
}
