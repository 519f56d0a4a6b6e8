"use client";

import type { LateWish } from "@/lib/model/order/order";
import { ActionForm } from "@/lib/ui/action-form";
import { SubmitButton } from "@/lib/ui/submit-button";
import type { OrderAction } from "./order-action";

interface LateDecisionFormProps {
  readonly late: LateWish;
  /** Of the difference above; null where there is none to take in. */
  readonly fingerprint: string | null;
  readonly action: OrderAction;
}

/** Takes a late wish in as it is shown, or not. */
export function LateDecisionForm({ late, fingerprint, action }: LateDecisionFormProps) {
  const answers =
    late.wish === null
      ? ([{ state: "withdrawn", words: "Take the leave back" }] as const)
      : ([
          ...(fingerprint === null ? [] : [{ state: "taken in", words: "Take it in" } as const]),
          { state: "declined", words: "Decline it" },
        ] as const);
  return (
    <div className="mt-3 flex flex-wrap gap-3">
      {answers.map(({ state, words }) => (
        <ActionForm key={state} action={action}>
          {({ isPending }) => (
            <>
              <input type="hidden" name="id" value={late.id} />
              <input type="hidden" name="lockVersion" value={late.lockVersion} />
              <input type="hidden" name="state" value={state} />
              <input type="hidden" name="fingerprint" value={fingerprint ?? ""} />
              <SubmitButton pending="Saving…" isPending={isPending} kind={state === "taken in" ? "plain" : "quiet"}>
                {words}
                <span className="sr-only">: {late.userName}</span>
              </SubmitButton>
            </>
          )}
        </ActionForm>
      ))}
    </div>
  );
}
