import type { OrderItem } from "@/lib/model/order/order";
import type { Preferences } from "@/lib/model/preferences";
import { OrderAmount } from "@/lib/ui/order/order-amount";

interface PackListProps {
  readonly item: OrderItem;
  readonly preferences: Preferences;
}

/** The packs that are bought, and what is left of them. */
export function PackList({ item, preferences }: PackListProps) {
  const { purchase, offers, amount, received } = item;
  if (purchase === null) {
    return <span className="text-muted">{amount === 0 ? "nobody needs it" : "no offer"}</span>;
  }
  const bought = offers.flatMap((offer, i) => {
    const count = purchase.counts[i] ?? 0;
    return count === 0 ? [] : [{ ...offer, count }];
  });
  return (
    <span>
      {bought.map(({ id, size, count }, i) => (
        <span key={id}>
          {i === 0 ? "" : " + "}
          {count} × <OrderAmount thing={item} amount={size} preferences={preferences} />
        </span>
      ))}
      {purchase.leftOver === 0 ? null : (
        <span className="text-sm text-muted">
          {" "}
          (<OrderAmount thing={item} amount={purchase.leftOver} preferences={preferences} /> over)
        </span>
      )}
      {received === null ? null : (
        <span className="text-sm text-muted">
          ; <OrderAmount thing={item} amount={received} preferences={preferences} /> came
        </span>
      )}
    </span>
  );
}
