"use client";

import { useEffect, useState } from "react";
import { flushSync } from "react-dom";

/** When printing began, while it lasts; null on the screen. What is printed is drawn before the paper is laid out. */
export function usePrinting(): Date | null {
  const [since, setSince] = useState<Date | null>(null);
  useEffect(() => {
    const paper = window.matchMedia("print");
    const begin = (): void => {
      flushSync(() => {
        setSince((present) => present ?? new Date());
      });
    };
    const end = (): void => {
      setSince(null);
    };
    const change = (): void => {
      if (paper.matches) begin();
      else end();
    };
    window.addEventListener("beforeprint", begin);
    window.addEventListener("afterprint", end);
    paper.addEventListener("change", change);
    return () => {
      window.removeEventListener("beforeprint", begin);
      window.removeEventListener("afterprint", end);
      paper.removeEventListener("change", change);
    };
  }, []);
  return since;
}
