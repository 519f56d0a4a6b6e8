import type { ReactElement } from "react";

// One language and one zone, so that the server and the browser print the same day.
const DAY = new Intl.DateTimeFormat("en-GB", {
  weekday: "short",
  day: "numeric",
  month: "short",
  year: "numeric",
  timeZone: "UTC",
});

/** A calendar day with its weekday. */
export function Day({ at }: { readonly at: Date }): ReactElement {
  return <time dateTime={at.toISOString().slice(0, 10)}>{DAY.format(at)}</time>;
}
