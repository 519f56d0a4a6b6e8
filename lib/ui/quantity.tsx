import type { ReactElement } from "react";
import type { Dimension, Interval } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { formatDifference } from "./format-difference";
import { formatQuantity, type FormattedQuantity } from "./format-quantity";

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
  const { value, reason, aligned = false, attention = false } = props;
  if (value === null) return <Missing reason={reason} aligned={aligned} />;
  const shown = format(props, value);
  const classes = [aligned ? "quantity-aligned" : "", attention ? "quantity-attention" : ""].join(" ").trim();
  return (
    <span className={classes}>
      <Figure shown={shown} />
      {shown.interval === null ? null : <IntervalFigure text={shown.interval} />}
      <span className="sr-only">{shown.spoken}</span>
    </span>
  );
}

function format(props: QuantityProps, value: number): FormattedQuantity {
  const { dimension, preferences, interval, digits, differenceFrom } = props;
  if (differenceFrom !== undefined) return formatDifference({ value, from: differenceFrom, dimension, preferences });
  return formatQuantity({ value, dimension, preferences, interval, digits });
}

/** Split at the mark, so that a table can line it up; read aloud from the hidden text beside it. */
function Figure({ shown }: { readonly shown: FormattedQuantity }): ReactElement {
  return (
    <span aria-hidden className="quantity-figure">
      <SplitAtMark text={shown.text} />
      <span className="quantity-unit">{` ${shown.unit}`}</span>
    </span>
  );
}

function IntervalFigure({ text }: { readonly text: string }): ReactElement {
  return (
    <span aria-hidden className="quantity-figure quantity-interval">
      <SplitAtMark text={` ${text}`} />
    </span>
  );
}

function SplitAtMark({ text }: { readonly text: string }): ReactElement {
  const mark = text.lastIndexOf(".");
  return (
    <>
      <span className="quantity-whole">{mark === -1 ? text : text.slice(0, mark)}</span>
      <span className="quantity-part">{mark === -1 ? "" : text.slice(mark)}</span>
    </>
  );
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
