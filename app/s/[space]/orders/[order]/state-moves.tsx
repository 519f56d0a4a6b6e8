"use client";

import type { Order } from "@/lib/model/order/order";
import { ORDER_MOVES, type OrderState } from "@/lib/model/order/order-words";
import { ActionForm } from "@/lib/ui/action-form";
import { SubmitButton } from "@/lib/ui/submit-button";
import type { OrderAction } from "./order-action";

interface StateMovesProps {
  readonly order: Pick<Order, "state" | "lockVersion" | "fingerprint">;
  readonly action: OrderAction;
}

const WORDS: Readonly<Record<OrderState, { readonly button: string; readonly means: string }>> = {
  open: { button: "Open it again", means: "The amounts follow the sheets again until the next lock." },
  locked: {
    button: "Lock the order",
    means: "Keeps the amounts and packs above; later changes of sheets are only told.",
  },
  placed: { button: "Mark as placed", means: "The supplier has it; from then on it can no longer be opened again." },
  received: { button: "Mark as received", means: "Everything that came is noted, item by item." },
  "handed out": {
    button: "Mark as handed out",
    means: "Everybody’s part is weighed out and noted in the weight list.",
  },
  cancelled: { button: "Cancel the order", means: "Nothing is bought. This cannot be taken back." },
};

/** The steps that an order can take from here. */
export function StateMoves({ order, action }: StateMovesProps) {
  const moves = ORDER_MOVES[order.state];
  if (moves.length === 0) return null;
  return (
    <section aria-labelledby="steps" className="no-print mt-10">
      <h2 id="steps" className="mb-2">
        Next step
      </h2>
      <ul className="list-ruled">
        {moves.map((state) => (
          <li key={state} className="py-3">
            <ActionForm action={action}>
              {({ isPending }) => (
                <div className="flex flex-wrap items-center gap-x-6 gap-y-2">
                  <input type="hidden" name="state" value={state} />
                  <input type="hidden" name="lockVersion" value={order.lockVersion} />
                  <input type="hidden" name="fingerprint" value={order.fingerprint} />
                  <SubmitButton pending="Saving…" isPending={isPending} kind={kindOf(state)}>
                    {WORDS[state].button}
                  </SubmitButton>
                  <span className="text-muted">{WORDS[state].means}</span>
                </div>
              )}
            </ActionForm>
          </li>
        ))}
      </ul>
    </section>
  );
}

function kindOf(state: OrderState): "plain" | "quiet" | "attention" {
  if (state === "cancelled") return "attention";
  return state === "open" ? "quiet" : "plain";
}
