"use client";

import type { Order } from "@/lib/model/order/order";
import { ActionForm } from "@/lib/ui/action-form";
import { SubmitButton } from "@/lib/ui/submit-button";
import { TextField } from "@/lib/ui/text-field";
import { DescribedFields } from "../described-fields";
import type { OrderAction } from "./order-action";

interface ChangeOrderFormProps {
  readonly order: Pick<Order, "title" | "closesAt" | "note" | "lockVersion">;
  readonly action: OrderAction;
}

/** Another title, closing day or note of an open order. */
export function ChangeOrderForm({ order, action }: ChangeOrderFormProps) {
  const { title, closesAt, note, lockVersion } = order;
  return (
    <details className="no-print mt-4 max-w-xl">
      <summary className="target">Change title, closing day or note</summary>
      {/* A new version begins the form anew, so that nothing stale is sent twice. */}
      <ActionForm key={lockVersion} action={action}>
        {({ errors, isPending }) => (
          <>
            <input type="hidden" name="lockVersion" value={lockVersion} />
            <TextField
              name="title"
              label="Title"
              maxLength={160}
              autoComplete="off"
              defaultValue={title}
              error={errors.title}
            />
            <DescribedFields values={{ closesAt: closesAt?.toISOString().slice(0, 10) ?? "", note }} errors={errors} />
            <div>
              <SubmitButton pending="Saving…" isPending={isPending} kind="quiet">
                Save the changes
              </SubmitButton>
            </div>
          </>
        )}
      </ActionForm>
    </details>
  );
}
