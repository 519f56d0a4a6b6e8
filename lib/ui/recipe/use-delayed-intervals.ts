"use client";

import { useEffect } from "react";
import { intervals } from "@/lib/calc/ledger";
import type { EditorStore } from "./editor-store";

/** Long enough not to come between two keystrokes. */
const PAUSE_MS = 180;

/** Computes the 80 % intervals once somebody pauses: they take several times as long as the numbers themselves. */
export function useDelayedIntervals(store: EditorStore): void {
  useEffect(() => {
    let pause: ReturnType<typeof setTimeout> | undefined;
    let waitsFor = store.state().shown;
    const stop = store.subscribe(() => {
      const { shown } = store.state();
      if (shown === waitsFor) return;
      waitsFor = shown;
      clearTimeout(pause);
      if (shown === null) return;
      pause = setTimeout(() => {
        store.dispatch({ type: "intervals", ranges: { of: shown, intervals: intervals(shown.brewed) } });
      }, PAUSE_MS);
    });
    return () => {
      clearTimeout(pause);
      stop();
    };
  }, [store]);
}
