import type { Order, OrderItem, OrderOffer } from "@/lib/model/order/order";
import type { Preferences } from "@/lib/model/preferences";
import { ChangeOfferForm } from "./change-offer-form";
import { removeOfferAction, saveOfferAction } from "./offer-actions";
import { RemoveOfferForm } from "./remove-offer-form";

interface OfferRowFormsProps {
  readonly space: string;
  readonly order: Pick<Order, "id" | "currency">;
  readonly item: OrderItem;
  readonly offer: OrderOffer;
  readonly preferences: Preferences;
}

/** What an organiser may do about one pack of an open order. */
export function OfferRowForms({ space, order, item, offer, preferences }: OfferRowFormsProps) {
  const bound = [space, order.id, item.id] as const;
  return (
    <div className="no-print flex flex-col items-start gap-2">
      <ChangeOfferForm
        {...{ item, offer, preferences }}
        currency={order.currency}
        action={saveOfferAction.bind(null, ...bound)}
      />
      <RemoveOfferForm offer={offer} action={removeOfferAction.bind(null, ...bound)} />
    </div>
  );
}
