import { useSyncExternalStore } from "react";

const listeners = new Set<() => void>();
let timer: ReturnType<typeof setInterval> | null = null;
let second = Math.floor(Date.now() / 1000);

function tick(): void {
  const present = Math.floor(Date.now() / 1000);
  if (present === second) return;
  second = present;
  for (const listener of listeners) listener();
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  timer ??= setInterval(tick, 250);
  document.addEventListener("visibilitychange", tick);
  return () => {
    listeners.delete(listener);
    document.removeEventListener("visibilitychange", tick);
    if (listeners.size > 0 || timer === null) return;
    clearInterval(timer);
    timer = null;
  };
}

/**
 * What depends on the device's time, ms since 1970 and looked at each second. Only another answer draws anew, for a phone
 * that draws a whole day each second is late for the tap. Everything that is timed is computed from instants.
 */
export function useOfNow<T extends string | number | boolean>(answer: (now: number) => T): T {
  return useSyncExternalStore(subscribe, () => answer(second * 1000));
}
