import type { Order, OrderItem } from "@/lib/model/order/order";
import type { Orderer } from "@/lib/server/orders/people";
import type { Member } from "@/lib/server/session";
import { proposeSubstitutionAction, saveItemAction, saveWantAction } from "./actions";
import { LateWantForm } from "./late-want-form";
import { addOfferAction } from "./offer-actions";
import { OfferForm } from "./offer-form";
import { receiveItemAction } from "./receipt-action";
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
  const { preferences } = member;
  const bound = [member.spaceSlug, order.id, item.id] as const;
  if (order.state === "placed" && order.mayOrganise && item.purchase !== null) {
    const action = receiveItemAction.bind(null, ...bound);
    return <ReceiptForm {...{ item, preferences, action }} currency={order.currency} />;
  }
  if (order.state === "locked") return <LateWantForm {...{ member, order, item }} />;
  if (order.state !== "open") return null;
  const own = order.wishes.find(({ itemId, userId }) => itemId === item.id && userId === member.userId);
  const others = order.items.filter(({ id, unit }) => id !== item.id && unit === item.unit);
  const forWhom = item.shares.filter(
    ({ userId, needed }) => needed > 0 && (order.mayOrganise || userId === member.userId),
  );
  return (
    <div className="no-print mt-10 grid items-start gap-x-12 gap-y-10 lg:grid-cols-2">
      <WantForm {...{ item, preferences }} wish={own ?? null} action={saveWantAction.bind(null, ...bound)} />
      {order.mayOrganise ? (
        <>
          <OfferForm
            {...{ item, preferences }}
            currency={order.currency}
            action={addOfferAction.bind(null, ...bound)}
          />
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
