import { explainFunction } from "@/lib/calc/explain";
import type { OrderItem } from "@/lib/model/order/order";
import type { Preferences } from "@/lib/model/preferences";
import { Money } from "@/lib/ui/order/money";
import { OrderAmount } from "@/lib/ui/order/order-amount";

interface PurchaseExplainedProps {
  readonly item: OrderItem;
  readonly currency: string;
  readonly preferences: Preferences;
}

/** How packs, parts and saving come about: in words, with these numbers, as an equation, and by which source. */
export function PurchaseExplained({ item, currency, preferences }: PurchaseExplainedProps) {
  const { purchase, alone, leftOverTo } = item;
  const explanation = explainFunction({ id: "order/combinedPurchase" });
  if (purchase === null || alone === null || !explanation.ok) return null;
  const { words, equation, validRange, sources } = explanation.explained;
  return (
    <section aria-labelledby="cost" className="mt-10">
      <h2 id="cost" className="mb-2">
        What it costs
      </h2>
      <p>
        <OrderAmount thing={item} amount={purchase.amount} preferences={preferences} exact /> for{" "}
        <Money minor={purchase.cost} currency={currency} />; each alone would have paid{" "}
        <Money minor={alone} currency={currency} /> together, so it saves{" "}
        <Money minor={alone - purchase.cost} currency={currency} />.{" "}
        {purchase.leftOver === 0 ? (
          "Nothing is left over."
        ) : (
          <>
            Left over: <OrderAmount thing={item} amount={purchase.leftOver} preferences={preferences} exact />,{" "}
            {leftOverTo === null
              ? "paid by all by their amounts, for the club’s stock."
              : `taken and paid for by ${leftOverTo.name}.`}
          </>
        )}
      </p>
      <details className="no-print mt-3">
        <summary className="target">How this is computed</summary>
        <p>{words}</p>
        <p className="my-2 font-serif text-lg break-words">{equation}</p>
        <p>{validRange}</p>
        <ul className="mt-2">
          {sources.map(({ anchor, title }) => (
            <li key={anchor}>{title}</li>
          ))}
        </ul>
      </details>
    </section>
  );
}
