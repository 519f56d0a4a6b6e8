import type { ReactElement } from "react";
import type { OrderThing } from "@/lib/model/order/order-words";
import type { Preferences } from "@/lib/model/preferences";
import { fixedDigits } from "../fixed-digits";
import { Quantity } from "../quantity";

const GRAMS_PER_KILOGRAM = 1000;

/**
 * An amount of an order in the unit in which its thing is bought.
 *
 * - `amount` in whole grams, millilitres or pieces.
 * - `exact` shows malt to the gram, for weighing; otherwise to ten grams.
 */
export interface OrderAmountProps {
  readonly thing: Pick<OrderThing, "kind" | "unit">;
  readonly amount: number;
  readonly preferences: Preferences;
  readonly exact?: boolean;
}

export function OrderAmount({ thing, amount, preferences, exact = false }: OrderAmountProps): ReactElement {
  if (thing.unit !== "g") {
    return (
      <span className="whitespace-nowrap">
        {fixedDigits(amount, 0)} <span className="quantity-unit">{thing.unit}</span>
      </span>
    );
  }
  if (thing.kind === "fermentable") {
    const digits = exact ? 3 : 2;
    return <Quantity value={amount / GRAMS_PER_KILOGRAM} dimension="mass" preferences={preferences} digits={digits} />;
  }
  const digits = preferences.units === "us" ? 2 : 0;
  return <Quantity value={amount} dimension="grams" preferences={preferences} digits={digits} />;
}
