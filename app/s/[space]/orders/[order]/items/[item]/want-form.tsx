"use client";

import { entryMeasure } from "@/lib/model/order/entered";
import type { OrderItem } from "@/lib/model/order/order";
import type { Preferences } from "@/lib/model/preferences";
import { ActionForm } from "@/lib/ui/action-form";
import { NumberField } from "@/lib/ui/number-field";
import { entryText, entryUnit } from "@/lib/ui/order/entry";
import { SubmitButton } from "@/lib/ui/submit-button";
import type { OrderAction } from "../../order-action";

interface WantFormProps {
  readonly item: OrderItem;
  readonly wish: { readonly amount: number; readonly lockVersion: number } | null;
  readonly preferences: Preferences;
  readonly action: OrderAction;
  /** In a locked order: the organiser decides. */
  readonly isLate?: boolean;
}

/** What the reader wants of it beside their sheets. */
export function WantForm({ item, wish, preferences, action, isLate = false }: WantFormProps) {
  const measure = entryMeasure(item);
  return (
    <section aria-labelledby="want">
      <h2 id="want" className="mb-2">
        {isLate ? "My late wish" : "What I want beside my sheets"}
      </h2>
      <ActionForm key={wish?.lockVersion ?? 0} action={action}>
        {({ errors, isPending }) => (
          <>
            <input type="hidden" name="lockVersion" value={wish?.lockVersion ?? 0} />
            <input type="hidden" name="measure" value={measure} />
            <NumberField
              name="amount"
              label="Amount I want beside"
              unit={entryUnit(measure, preferences)}
              hint={isLate ? "0 for none. It counts once an organiser takes it in." : "0 takes it back."}
              defaultValue={entryText(measure, wish?.amount ?? 0, preferences)}
              error={errors.amount}
            />
            <div>
              <SubmitButton pending="Saving…" isPending={isPending} kind="quiet">
                {isLate ? "Ask for it" : "Save my wish"}
              </SubmitButton>
            </div>
          </>
        )}
      </ActionForm>
    </section>
  );
}
