import Link from "next/link";
import type { OrderSummary } from "@/lib/model/order/order";
import { DataTable, type DataColumn } from "@/lib/ui/data-table";
import { Day } from "@/lib/ui/day";

interface OrderTableProps {
  readonly home: string;
  readonly orders: readonly OrderSummary[];
}

/** The club's orders, the newest first. */
export function OrderTable({ home, orders }: OrderTableProps) {
  const columns: readonly DataColumn<OrderSummary>[] = [
    {
      id: "title",
      label: "Order",
      cell: ({ id, title }) => (
        <Link href={`${home}/orders/${id}`} className="target">
          {title}
        </Link>
      ),
    },
    { id: "state", label: "State", cell: ({ state }) => state },
    {
      id: "shared",
      label: "For",
      cell: ({ sharedBrew }) => (sharedBrew === null ? "no shared brew" : sharedBrew.title),
    },
    {
      id: "closes",
      label: "Closes",
      cell: ({ closesAt }) => (closesAt === null ? "no day set" : <Day at={closesAt} />),
    },
  ];
  return <DataTable caption="Orders" captionHidden columns={columns} records={orders} keyOf={({ id }) => id} />;
}
