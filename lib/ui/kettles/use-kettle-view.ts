"use client";

import { usePathname, useSearchParams } from "next/navigation";
import { useCallback, useMemo } from "react";
import { readView, viewQuery, type KettleView } from "./kettle-view";

interface ViewInAddress {
  readonly view: KettleView;
  /** Writes a view into the address: "push" where going back should undo it. */
  readonly show: (view: KettleView, how?: "push" | "replace") => void;
}

/** The order and the filter of the table live in the address, so that they survive a reload and can be sent to somebody. */
export function useKettleView(): ViewInAddress {
  const query = useSearchParams();
  const path = usePathname();
  const view = useMemo(() => readView(Object.fromEntries(query)), [query]);
  const show = useCallback(
    (next: KettleView, how: "push" | "replace" = "push"): void => {
      const address = path + viewQuery(next);
      // The table follows without asking the server again.
      if (how === "push") window.history.pushState(null, "", address);
      else window.history.replaceState(null, "", address);
    },
    [path],
  );
  return { view, show };
}
