"use client";

import type { ReactElement } from "react";
import { usePrinting } from "../use-printing";
import { PrintedTime } from "./printed-time";

/** When the paper was printed; nothing on the screen. */
export function PrintedAt(): ReactElement | null {
  const at = usePrinting();
  return at === null ? null : <PrintedTime at={at} />;
}
