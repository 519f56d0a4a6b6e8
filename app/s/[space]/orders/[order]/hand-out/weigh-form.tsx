"use client";

import { useId } from "react";
import { entryMeasure } from "@/lib/model/order/entered";
import type { OrderItem, OrderShare } from "@/lib/model/order/order";
import type { Preferences } from "@/lib/model/preferences";
import { ActionForm } from "@/lib/ui/action-form";
import { entryText, entryUnit } from "@/lib/ui/order/entry";
import { SubmitButton } from "@/lib/ui/submit-button";
import type { OrderAction } from "../order-action";

interface WeighFormProps {
  readonly item: OrderItem;
  readonly share: OrderShare;
  readonly amount: number;
  readonly preferences: Preferences;
  readonly action: OrderAction;
  /** Takes the weight back that was noted. */
  readonly isUndo?: boolean;
}

/** The weight of one bag, and the tick that says it is done. */
export function WeighForm({ item, share, amount, preferences, action, isUndo = false }: WeighFormProps) {
  const id = useId();
  const measure = entryMeasure(item);
  const unit = entryUnit(measure, preferences);
  const about = `${item.name} for ${share.userName}`;
  return (
    <div className="no-print">
      <ActionForm action={action}>
        {({ isPending }) => (
          <div className="flex flex-wrap items-center gap-3">
            <input type="hidden" name="itemId" value={item.id} />
            <input type="hidden" name="userId" value={share.userId} />
            <input type="hidden" name="lockVersion" value={share.lockVersion} />
            <input type="hidden" name="measure" value={measure} />
            {isUndo ? (
              <input type="hidden" name="amount" value="" />
            ) : (
              <>
                <label htmlFor={id} className="sr-only">
                  Weight of {about}, {unit}
                </label>
                <input
                  id={id}
                  name="amount"
                  inputMode="decimal"
                  autoComplete="off"
                  className="input input-number max-w-28"
                  defaultValue={entryText(measure, amount, preferences)}
                />
                <span aria-hidden className="text-muted">
                  {unit}
                </span>
              </>
            )}
            <SubmitButton pending="Saving…" isPending={isPending} kind="quiet">
              {isUndo ? "Take back" : "Done"}
              <span className="sr-only">: {about}</span>
            </SubmitButton>
          </div>
        )}
      </ActionForm>
    </div>
  );
}
