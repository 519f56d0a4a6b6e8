import type { LateWish, Order } from "@/lib/model/order/order";
import type { Preferences } from "@/lib/model/preferences";
import { OrderAmount } from "@/lib/ui/order/order-amount";
import { LateDecisionForm } from "./late-decision-form";
import { LateDifferenceTable } from "./late-difference-table";
import type { OrderAction } from "./order-action";

interface LateWishEntryProps {
  readonly late: LateWish;
  readonly order: Order;
  readonly preferences: Preferences;
  /** null for who does not decide. */
  readonly action: OrderAction | null;
}

/** One late wish: whose, why, what it would change, and the decision on it. */
export function LateWishEntry({ late, order, preferences, action }: LateWishEntryProps) {
  const { wish, userName, reason, letByName } = late;
  const item = order.items.find(({ id }) => id === wish?.itemId);
  const difference = order.lateDifferences.find(({ wishId }) => wishId === late.id);
  return (
    <li className="py-3">
      <p className="mb-2">
        {wish === null || item === undefined ? (
          `${userName} may change one wish, and has not said which yet.`
        ) : (
          <>
            {userName} wants <OrderAmount thing={item} amount={wish.amount} preferences={preferences} exact /> of{" "}
            {item.name} beside the sheets.
          </>
        )}{" "}
        <span className="text-muted">
          Let by {letByName}: {reason}
        </span>
      </p>
      {difference === undefined || item === undefined ? null : (
        <LateDifferenceTable {...{ difference, item, preferences }} currency={order.currency} />
      )}
      {action === null ? null : (
        <LateDecisionForm late={late} fingerprint={difference?.fingerprint ?? null} action={action} />
      )}
    </li>
  );
}
