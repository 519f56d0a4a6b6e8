"use client";

import { useDeferredValue, useMemo } from "react";
import { intervals, type Intervals } from "@/lib/calc/ledger";
import type { EditorState } from "./editor-state";
import { shiftedIntervals } from "./shifted-intervals";

/** The 80 % intervals of what is shown. They follow when the numbers themselves are on the screen. */
export function useIntervals(shown: EditorState["shown"]): Intervals {
  const later = useDeferredValue(shown);
  const computed = useMemo(() => (later === null ? {} : intervals(later.brewed)), [later]);
  if (shown === null || later === null || shown === later) return computed;
  return shiftedIntervals(computed, later.brewed.ledger, shown.brewed.ledger);
}
