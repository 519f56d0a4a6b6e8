import type { ReactElement } from "react";

const WHEN = new Intl.DateTimeFormat("en-GB", { dateStyle: "medium", timeStyle: "short" });

/** When the paper was printed, as a sentence. */
export function PrintedTime({ at }: { readonly at: Date }): ReactElement {
  return (
    <>
      Printed on <time dateTime={at.toISOString()}>{WHEN.format(at)}</time>.
    </>
  );
}
