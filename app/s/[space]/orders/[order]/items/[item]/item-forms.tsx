import type { Order, OrderItem } from "@/lib/model/order/order";
import type { Orderer } from "@/lib/server/orders/people";
import type { Member } from "@/lib/server/session";
import {
  addOfferAction,
  proposeSubstitutionAction,
  receiveItemAction,
  saveItemAction,
  saveWantAction,
} from "./actions";
import { OfferForm } from "./offer-form";
import { ReceiptForm } from "./receipt-form";
import { SettingsForm } from "./settings-form";
import { SubstitutionForm } from "./substitution-form";
import { WantForm } from "./want-form";

interface ItemFormsProps {
  readonly member: Member;
  readonly order: Order;
  readonly item: OrderItem;
  readonly people: readonly Orderer[];
}

/** What the reader may do about one item in the present state of its order. */
export function ItemForms({ member, order, item, people }: ItemFormsProps) {
  const bound = [member.spaceSlug, order.id, item.id] as const;
  if (order.state === "placed" && order.mayOrganise && item.purchase !== null) {
    return <ReceiptForm item={item} currency={order.currency} action={receiveItemAction.bind(null, ...bound)} />;
  }
  if (order.state !== "open") return null;
  const own = order.wishes.find(({ itemId, userId }) => itemId === item.id && userId === member.userId);
  const others = order.items.filter(({ id, unit }) => id !== item.id && unit === item.unit);
  const forWhom = item.shares.filter(
    ({ userId, needed }) => needed > 0 && (order.mayOrganise || userId === member.userId),
  );
  return (
    <div className="no-print mt-10 grid items-start gap-x-12 gap-y-10 lg:grid-cols-2">
      <WantForm item={item} wish={own ?? null} action={saveWantAction.bind(null, ...bound)} />
      {order.mayOrganise ? (
        <>
          <OfferForm item={item} currency={order.currency} action={addOfferAction.bind(null, ...bound)} />
          <SettingsForm item={item} people={people} action={saveItemAction.bind(null, ...bound)} />
        </>
      ) : null}
      {others.length === 0 || forWhom.length === 0 ? null : (
        <SubstitutionForm
          item={item}
          others={others.map(({ id, name }) => ({ value: id, text: name }))}
          forWhom={forWhom.map(({ userId, userName }) => ({ value: userId, text: userName }))}
          action={proposeSubstitutionAction.bind(null, ...bound)}
        />
      )}
    </div>
  );
}
