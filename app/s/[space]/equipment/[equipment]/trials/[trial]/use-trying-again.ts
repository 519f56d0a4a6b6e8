"use client";

import { useEffect } from "react";

const TRY_AGAIN_MS = 15_000;

/** Calls `send` when the page opens, when the network comes back, and every quarter of a minute that it is looked at. */
export function useTryingAgain(isOn: boolean, send: () => void): void {
  useEffect(() => {
    if (!isOn) return undefined;
    send();
    const again = setInterval(() => {
      if (document.visibilityState === "visible") send();
    }, TRY_AGAIN_MS);
    window.addEventListener("online", send);
    return () => {
      clearInterval(again);
      window.removeEventListener("online", send);
    };
  }, [isOn, send]);
}
