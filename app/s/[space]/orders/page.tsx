import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { roleMay } from "@/lib/model/roles";
import { listOrders } from "@/lib/server/orders/reads";
import { requireMember } from "@/lib/server/session";
import { EmptyState } from "@/lib/ui/empty-state";
import { OrderTable } from "./order-table";

export const metadata: Metadata = { title: "Orders" };

interface OrdersPageProps {
  readonly params: Promise<{ readonly space: string }>;
}

export default async function OrdersPage({ params }: OrdersPageProps) {
  const member = await requireMember((await params).space);
  if (!roleMay(member.role, "order")) notFound();
  const orders = await listOrders(member);
  const home = `/s/${member.spaceSlug}`;
  const open = roleMay(member.role, "organise") ? (
    <Link href={`${home}/orders/new`} className="button">
      Open an order
    </Link>
  ) : undefined;
  return (
    <>
      <h1 className="mb-4">Orders</h1>
      {orders.length === 0 ? (
        <EmptyState action={open}>
          What the club buys together: the ingredients of everybody’s sheets less what is on hand, in the cheapest
          packs, with the cost split to the cent.
        </EmptyState>
      ) : (
        <>
          <OrderTable home={home} orders={orders} />
          <p className="mt-4">{open}</p>
        </>
      )}
    </>
  );
}
