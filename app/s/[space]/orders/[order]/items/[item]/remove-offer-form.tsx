"use client";

import type { OrderOffer } from "@/lib/model/order/order";
import { ActionForm } from "@/lib/ui/action-form";
import { SubmitButton } from "@/lib/ui/submit-button";
import type { OrderAction } from "../../order-action";

interface RemoveOfferFormProps {
  readonly offer: OrderOffer;
  readonly action: OrderAction;
}

/** Takes a pack out of what is offered. */
export function RemoveOfferForm({ offer, action }: RemoveOfferFormProps) {
  return (
    <ActionForm action={action}>
      {({ isPending }) => (
        <>
          <input type="hidden" name="offerId" value={offer.id} />
          <input type="hidden" name="lockVersion" value={offer.lockVersion} />
          <SubmitButton pending="Removing…" isPending={isPending} kind="attention">
            Remove<span className="sr-only"> the pack of {offer.size}</span>
          </SubmitButton>
        </>
      )}
    </ActionForm>
  );
}
