import type { ReactElement } from "react";
import type { FormattedQuantity } from "./format-quantity";

/**
 * A formatted number with its unit and its interval: split at the mark, so that a table can line it up, and read aloud
 * from the hidden text beside it.
 */
export function FormattedFigure(props: {
  readonly shown: FormattedQuantity;
  readonly aligned?: boolean | undefined;
  readonly attention?: boolean | undefined;
}): ReactElement {
  const { shown, aligned = false, attention = false } = props;
  const classes = [aligned ? "quantity-aligned" : "", attention ? "quantity-attention" : ""].join(" ").trim();
  return (
    <span className={classes}>
      <span aria-hidden className="quantity-figure">
        <SplitAtMark text={shown.text} />
        <span className="quantity-unit">{` ${shown.unit}`}</span>
      </span>
      {shown.interval === null ? null : (
        <span aria-hidden className="quantity-figure quantity-interval">
          <SplitAtMark text={` ${shown.interval}`} />
        </span>
      )}
      <span className="sr-only">{shown.spoken}</span>
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
