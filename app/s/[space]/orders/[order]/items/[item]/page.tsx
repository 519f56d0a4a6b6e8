import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { requireMember } from "@/lib/server/session";
import { listOrderers } from "@/lib/server/orders/people";
import { readOrder } from "../../read-order";
import { PurchaseExplained } from "./purchase-explained";
import { ItemForms } from "./item-forms";
import { OfferTable } from "./offer-table";
import { ShareTable } from "./share-table";

interface ItemPageProps {
  readonly params: Promise<{ readonly space: string; readonly order: string; readonly item: string }>;
}

async function readItem({ params }: ItemPageProps) {
  const { space, order: orderId, item: itemId } = await params;
  const order = await readOrder(space, orderId);
  return { space, order, item: order.items.find(({ id }) => id === itemId) ?? notFound() };
}

export async function generateMetadata(props: ItemPageProps): Promise<Metadata> {
  const { item, order } = await readItem(props);
  return { title: `${item.name}, ${order.title}` };
}

export default async function ItemPage(props: ItemPageProps) {
  const { space, order, item } = await readItem(props);
  const member = await requireMember(space);
  const { preferences } = member;
  return (
    <>
      <h1>{item.name}</h1>
      <p className="mb-6">
        In the order <Link href={`/s/${space}/orders/${order.id}`}>{order.title}</Link>, which is {order.state}.
      </p>
      <ShareTable home={`/s/${space}`} item={item} currency={order.currency} preferences={preferences} />
      <OfferTable space={space} order={order} item={item} preferences={preferences} />
      <PurchaseExplained item={item} currency={order.currency} preferences={preferences} />
      <ItemForms member={member} order={order} item={item} people={await listOrderers(member)} />
    </>
  );
}
