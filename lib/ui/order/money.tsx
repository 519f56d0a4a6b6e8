import type { ReactElement } from "react";
import { majorText } from "@/lib/model/price";

/**
 * An amount of money with its currency.
 *
 * - `minor` in the smallest unit of the currency; null prints a dash, and `reason` says why.
 */
export interface MoneyProps {
  readonly minor: number | null;
  readonly currency: string;
  readonly reason?: string;
}

export function Money({ minor, currency, reason = "no price yet" }: MoneyProps): ReactElement {
  if (minor === null) {
    return (
      <span className="quantity-missing" title={reason}>
        <span aria-hidden>—</span>
        <span className="sr-only">{reason}</span>
      </span>
    );
  }
  return (
    <span className="whitespace-nowrap">
      {majorText(minor, currency)} <span className="quantity-unit">{currency}</span>
    </span>
  );
}
