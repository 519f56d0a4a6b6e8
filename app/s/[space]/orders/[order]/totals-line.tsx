import type { ReactNode } from "react";
import type { OrderTotals } from "@/lib/model/order/order-totals";
import { Notice } from "@/lib/ui/notice";
import { Money } from "@/lib/ui/order/money";

interface TotalsLineProps {
  readonly totals: OrderTotals;
  readonly currency: string;
}

/** What the order costs, and what it saves against each buying alone. */
export function TotalsLine({ totals, currency }: TotalsLineProps) {
  const { cost, alone, saving, withoutOffer } = totals;
  return (
    <>
      <dl className="mb-4 flex flex-wrap gap-x-10 gap-y-2">
        <Figure label="Cost together">
          <Money minor={cost} currency={currency} />
        </Figure>
        <Figure label="Each alone">
          <Money minor={alone} currency={currency} />
        </Figure>
        <Figure label="Saved">
          <Money minor={saving} currency={currency} />
        </Figure>
      </dl>
      {withoutOffer.length === 0 ? null : (
        <div className="mb-4">
          <Notice kind="attention">
            No pack is offered for {withoutOffer.join(", ")}: it is in no sum, and would not be bought.
          </Notice>
        </div>
      )}
    </>
  );
}

function Figure({ label, children }: { readonly label: string; readonly children: ReactNode }) {
  return (
    <div>
      <dt className="text-sm text-muted">{label}</dt>
      <dd className="text-xl">{children}</dd>
    </div>
  );
}
