import type { Order, OrderItem } from "@/lib/model/order/order";
import type { Member } from "@/lib/server/session";
import { askLateAction } from "./actions";
import { WantForm } from "./want-form";

interface LateWantFormProps {
  readonly member: Member;
  readonly order: Order;
  readonly item: OrderItem;
}

/** The wish of somebody whom an organiser lets name one in a locked order; nothing for anybody else. */
export function LateWantForm({ member, order, item }: LateWantFormProps) {
  const { userId, spaceSlug, preferences } = member;
  const waiting = order.lateWishes.find(
    ({ userId: whose, state }) => whose === userId && (state === "let" || state === "wished"),
  );
  if (waiting === undefined || item.purchase === null) return null;
  const wanted = item.shares.find((share) => share.userId === userId)?.wanted ?? 0;
  const amount = waiting.wish?.itemId === item.id ? waiting.wish.amount : wanted;
  return (
    <div className="no-print mt-10 max-w-xl">
      <WantForm
        {...{ item, preferences }}
        wish={{ amount, lockVersion: waiting.lockVersion }}
        action={askLateAction.bind(null, spaceSlug, order.id, item.id)}
        isLate
      />
      {waiting.wish?.itemId === item.id ? <p className="mt-3">Asked for: an organiser decides on it.</p> : null}
    </div>
  );
}
