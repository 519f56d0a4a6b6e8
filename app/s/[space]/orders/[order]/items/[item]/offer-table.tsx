import type { Order, OrderItem, OrderOffer } from "@/lib/model/order/order";
import type { Preferences } from "@/lib/model/preferences";
import { DataTable, type DataColumn } from "@/lib/ui/data-table";
import { Money } from "@/lib/ui/order/money";
import { OrderAmount } from "@/lib/ui/order/order-amount";
import { OfferRowForms } from "./offer-row-forms";

interface OfferTableProps {
  readonly space: string;
  readonly order: Order;
  readonly item: OrderItem;
  readonly preferences: Preferences;
}

/** The packs offered, and how many of each are cheapest. */
export function OfferTable({ space, order, item, preferences }: OfferTableProps) {
  const counts = new Map(item.offers.map(({ id }, i) => [id, item.purchase?.counts[i] ?? 0]));
  const mayChange = order.mayOrganise && order.state === "open";
  const columns: readonly DataColumn<OrderOffer>[] = [
    {
      id: "pack",
      label: "Pack",
      cell: ({ size }) => <OrderAmount thing={item} amount={size} preferences={preferences} exact />,
    },
    {
      id: "price",
      label: "Price",
      isNumber: true,
      cell: ({ priceMinor }) => <Money minor={priceMinor} currency={order.currency} />,
    },
    { id: "count", label: "Bought", isNumber: true, cell: ({ id }) => `${String(counts.get(id) ?? 0)}\u00a0×` },
    { id: "note", label: "Note", cell: ({ note }) => note },
    ...(mayChange
      ? [
          {
            id: "change",
            label: "Change",
            isAction: true,
            cell: (offer: OrderOffer) => <OfferRowForms {...{ space, order, item, offer, preferences }} />,
          },
        ]
      : []),
  ];
  return (
    <section aria-labelledby="offers" className="mt-10">
      <h2 id="offers" className="mb-2">
        Packs offered
      </h2>
      {item.offers.length === 0 ? (
        <p className="text-muted">None yet: without a pack and its price this is not bought.</p>
      ) : (
        <DataTable
          caption="Packs offered"
          captionHidden
          columns={columns}
          records={item.offers}
          keyOf={({ id }) => id}
        />
      )}
    </section>
  );
}
