import type { ReactNode } from "react";
import type { IngredientLot } from "@/lib/model/ingredient-lot";
import type { Preferences } from "@/lib/model/preferences";
import { majorText } from "@/lib/model/price";
import { amountText } from "@/lib/ui/ingredient/amount-text";
import { BestBefore } from "../../best-before";

interface LotHeadProps {
  readonly lot: IngredientLot;
  readonly today: string;
  readonly preferences: Preferences;
}

/** How much, whose, until when and for how much. */
export function LotHead({ lot, today, preferences }: LotHeadProps) {
  const { what, onHand, owner, bestBefore, price } = lot;
  return (
    <dl className="mb-6 flex flex-wrap gap-x-8 gap-y-2">
      <Fact label="On hand">{amountText(onHand, what.kind, preferences)}</Fact>
      <Fact label="Whose">{owner?.name ?? "the club"}</Fact>
      <Fact label="Best before">
        {bestBefore === null ? "not stated" : <BestBefore day={bestBefore} today={today} />}
      </Fact>
      <Fact label="Price">
        {price === null
          ? "not stated"
          : `${majorText(price.minor, price.currency)} ${price.currency} for ${amountText(price.for, what.kind, preferences)}`}
      </Fact>
    </dl>
  );
}

function Fact({ label, children }: { readonly label: string; readonly children: ReactNode }) {
  return (
    <div>
      <dt className="text-muted">{label}</dt>
      <dd className="tabular-nums">{children}</dd>
    </div>
  );
}
