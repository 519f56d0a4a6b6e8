"use client";

import type { ReactElement } from "react";
import { usePrinting } from "../use-printing";

const WHEN = new Intl.DateTimeFormat("en-GB", { dateStyle: "medium", timeStyle: "short" });

/** When the paper was printed; nothing on the screen. */
export function PrintedAt(): ReactElement | null {
  const at = usePrinting();
  if (at === null) return null;
  return (
    <>
      Printed on <time dateTime={at.toISOString()}>{WHEN.format(at)}</time>.
    </>
  );
}
