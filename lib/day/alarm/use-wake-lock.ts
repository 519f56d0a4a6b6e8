import { useEffect, useState } from "react";

export type WakeLockState = "held" | "not held" | "not offered";

/** Keeps the screen on while the page is seen. The system takes the lock back when it is not, so it is asked for again. */
export function useWakeLock(wanted: boolean): WakeLockState {
  const [state, setState] = useState<WakeLockState>("wakeLock" in navigator ? "not held" : "not offered");
  useEffect(() => {
    if (!wanted || !("wakeLock" in navigator)) return undefined;
    let lock: WakeLockSentinel | null = null;
    const page = { isOver: false };
    const isOver = (): boolean => page.isOver;
    async function ask(): Promise<void> {
      if (document.visibilityState !== "visible" || isOver()) return;
      try {
        lock = await navigator.wakeLock.request("screen");
        lock.addEventListener("release", () => setState("not held"));
        setState("held");
        if (isOver()) await lock.release();
      } catch {
        // A low battery refuses it; the screen says so.
        setState("not held");
      }
    }
    const seen = (): void => void ask();
    void ask();
    document.addEventListener("visibilitychange", seen);
    return () => {
      page.isOver = true;
      document.removeEventListener("visibilitychange", seen);
      void lock?.release();
    };
  }, [wanted]);
  return state;
}
