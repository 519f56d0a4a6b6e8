import Link from "next/link";
import type { OrderItem, OrderShare } from "@/lib/model/order/order";
import type { Preferences } from "@/lib/model/preferences";
import { DataTable, type DataColumn } from "@/lib/ui/data-table";
import { EmptyState } from "@/lib/ui/empty-state";
import { Money } from "@/lib/ui/order/money";
import { OrderAmount } from "@/lib/ui/order/order-amount";

interface ShareTableProps {
  readonly home: string;
  readonly item: OrderItem;
  readonly currency: string;
  readonly preferences: Preferences;
}

/** The total opened: whose sheets need how much, less what is on hand, with what is wanted beside, and who pays what. */
export function ShareTable({ home, item, currency, preferences }: ShareTableProps) {
  if (item.shares.length === 0) return <EmptyState>Nobody needs this now.</EmptyState>;
  const amount = (of: (share: OrderShare) => number) => (share: OrderShare) =>
    of(share) === 0 ? (
      <span className="text-muted">none</span>
    ) : (
      <OrderAmount thing={item} amount={of(share)} preferences={preferences} exact />
    );
  const hasExtra = item.shares.some(({ extra }) => extra > 0);
  const isAllotted = item.shares.some(({ allotted }) => allotted !== null);
  const columns: readonly DataColumn<OrderShare>[] = [
    { id: "who", label: "Member", cell: ({ userName }) => userName },
    {
      id: "sheets",
      label: "Sheets",
      cell: (share) => <Sources home={home} item={item} share={share} preferences={preferences} />,
    },
    { id: "needed", label: "Needed", isNumber: true, cell: amount(({ needed }) => needed) },
    { id: "on-hand", label: "Less on hand", isNumber: true, cell: amount(({ onHand }) => onHand) },
    { id: "wanted", label: "Wanted beside", isNumber: true, cell: amount(({ wanted }) => wanted) },
    ...(hasExtra
      ? [{ id: "extra", label: "Left over taken", isNumber: true, cell: amount(({ extra }) => extra) }]
      : []),
    { id: "amount", label: "To buy", isNumber: true, cell: amount((share) => share.amount) },
    ...(isAllotted
      ? [{ id: "allotted", label: "Allotted", isNumber: true, cell: amount(({ allotted }) => allotted ?? 0) }]
      : []),
    { id: "cost", label: "Pays", isNumber: true, cell: ({ cost }) => <Money minor={cost} currency={currency} /> },
    { id: "alone", label: "Alone", isNumber: true, cell: ({ alone }) => <Money minor={alone} currency={currency} /> },
  ];
  return (
    <section aria-labelledby="shares">
      <h2 id="shares" className="mb-2">
        Who needs it
      </h2>
      <DataTable
        caption="What each member needs of it"
        captionHidden
        columns={columns}
        records={item.shares}
        keyOf={({ userId }) => userId}
      />
      <p className="mt-3">
        Together <OrderAmount thing={item} amount={item.amount} preferences={preferences} exact />, each member’s part
        rounded up to whole {item.unit === "pcs" ? "pieces" : item.unit}.
      </p>
    </section>
  );
}

function Sources(props: {
  readonly home: string;
  readonly item: OrderItem;
  readonly share: OrderShare;
  readonly preferences: Preferences;
}) {
  const { home, item, share, preferences } = props;
  if (share.sources.length === 0) return <span className="text-muted">none</span>;
  return (
    <ul>
      {share.sources.map(({ label, brewId, amount }, i) => (
        <li key={i}>
          {brewId === null ? label : <Link href={`${home}/brews/${brewId}`}>{label}</Link>}:{" "}
          <OrderAmount thing={item} amount={amount} preferences={preferences} exact />
        </li>
      ))}
    </ul>
  );
}
