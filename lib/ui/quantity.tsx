import type { ReactElement } from "react";
import type { Dimension, Interval } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { formatDifference } from "./format-difference";
import { formatQuantity, type FormattedQuantity } from "./format-quantity";
import { FormattedFigure } from "./formatted-figure";

/**
 * The one place that prints a number with its unit.
 *
 * - `value` in the library's unit of `dimension`; null prints a dash, and `reason` says why there is no number.
 * - `interval` the 80 % interval, same unit; it decides the digits.
 * - `differenceFrom` prints how far the value is from this one, signed, instead of the value.
 * - `digits` for a number that was decided (a setting, an amount) rather than predicted.
 * - `aligned` keeps the decimal mark in a column, for tables; otherwise the number flows in its sentence.
 * - `attention` prints it in the accent colour; say in words nearby why.
 */
export interface QuantityProps {
  readonly value: number | null;
  readonly dimension: Dimension;
  readonly preferences: Preferences;
  readonly interval?: Interval | null | undefined;
  readonly differenceFrom?: number | undefined;
  readonly digits?: number | undefined;
  readonly reason?: string | undefined;
  readonly aligned?: boolean | undefined;
  readonly attention?: boolean | undefined;
}

export function Quantity(props: QuantityProps): ReactElement {
  const { value, reason, aligned = false, attention } = props;
  if (value === null) return <Missing reason={reason} aligned={aligned} />;
  return <FormattedFigure shown={format(props, value)} aligned={aligned} attention={attention} />;
}

function format(props: QuantityProps, value: number): FormattedQuantity {
  const { dimension, preferences, interval, digits, differenceFrom } = props;
  if (differenceFrom !== undefined) return formatDifference({ value, from: differenceFrom, dimension, preferences });
  return formatQuantity({ value, dimension, preferences, interval, digits });
}

function Missing({
  reason,
  aligned,
}: {
  readonly reason: string | undefined;
  readonly aligned: boolean;
}): ReactElement {
  return (
    <span className={aligned ? "quantity-aligned quantity-missing" : "quantity-missing"} title={reason}>
      <span aria-hidden className="quantity-figure">
        <span className="quantity-whole">—</span>
      </span>
      <span className="sr-only">{reason ?? "no value"}</span>
    </span>
  );
}
