"use client";

import { ActionForm } from "@/lib/ui/action-form";
import { SubmitButton } from "@/lib/ui/submit-button";
import type { OrderAction } from "../order-action";
import type { Weighing } from "./weight-lists";

interface StockFormProps {
  readonly weighing: Weighing;
  readonly action: OrderAction;
}

const KEPT_BY_HAND: readonly string[] = ["yeast", "other"];

/** Makes a lot of the reader's own of what was weighed out for them, once. */
export function StockForm({ weighing: { item, share }, action }: StockFormProps) {
  if (share.handed === null || share.handed.amount === 0 || KEPT_BY_HAND.includes(item.kind)) return null;
  if (share.lotId !== null) return <span>in my stock</span>;
  return (
    <div className="no-print">
      <ActionForm action={action}>
        {({ isPending }) => (
          <>
            <input type="hidden" name="itemId" value={item.id} />
            <input type="hidden" name="lockVersion" value={share.lockVersion} />
            <SubmitButton pending="Taking…" isPending={isPending} kind="quiet">
              Take into my stock<span className="sr-only">: {item.name}</span>
            </SubmitButton>
          </>
        )}
      </ActionForm>
    </div>
  );
}
