import type { Metadata } from "next";
import { memberTotals, orderTotals } from "@/lib/model/order/order-totals";
import { requireMember } from "@/lib/server/session";
import { addThingAction, changeOrderAction, decideSubstitutionAction, moveOrderAction } from "./actions";
import { ChangeOrderForm } from "./change-order-form";
import { DifferenceList } from "./difference-list";
import { EventList } from "./event-list";
import { ItemTable } from "./item-table";
import { LateSection } from "./late-section";
import { NewThingForm } from "./new-thing-form";
import { OrderHeading } from "./order-heading";
import { readOrder } from "./read-order";
import { StateMoves } from "./state-moves";
import { SubstitutionList } from "./substitution-list";
import { TotalsLine } from "./totals-line";

interface OrderPageProps {
  readonly params: Promise<{ readonly space: string; readonly order: string }>;
}

export async function generateMetadata({ params }: OrderPageProps): Promise<Metadata> {
  const { space, order } = await params;
  return { title: (await readOrder(space, order)).title };
}

export default async function OrderPage({ params }: OrderPageProps) {
  const { space, order: id } = await params;
  const [member, order] = [await requireMember(space), await readOrder(space, id)];
  const { preferences } = member;
  const home = `/s/${space}`;
  return (
    <>
      <OrderHeading home={home} order={order} />
      {order.mayOrganise && order.state === "open" ? (
        <ChangeOrderForm order={order} action={changeOrderAction.bind(null, space, id)} />
      ) : null}
      <DifferenceList differences={order.differences} preferences={preferences} />
      <section aria-labelledby="items" className="mt-6">
        <h2 id="items" className="mb-2">
          What is bought
        </h2>
        <TotalsLine totals={orderTotals(order.items)} currency={order.currency} />
        <ItemTable home={home} order={order} totals={memberTotals(order)} preferences={preferences} />
      </section>
      {order.state === "open" ? (
        <section aria-labelledby="new-thing" className="no-print mt-10 max-w-xl">
          <h2 id="new-thing" className="mb-2">
            Something that no sheet names
          </h2>
          <NewThingForm preferences={preferences} action={addThingAction.bind(null, space, id)} />
        </section>
      ) : null}
      <SubstitutionList order={order} ownId={member.userId} action={decideSubstitutionAction.bind(null, space, id)} />
      <LateSection member={member} order={order} />
      {order.mayOrganise ? <StateMoves order={order} action={moveOrderAction.bind(null, space, id)} /> : null}
      <EventList events={order.events} />
    </>
  );
}
