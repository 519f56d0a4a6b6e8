const LATEST_MS = 2_000;

/** Calls once the browser has nothing else to do, or after two seconds; returns what cancels it. */
export function whenIdle(work: () => void): () => void {
  // Not every browser tells when it is idle.
  if (typeof window.requestIdleCallback !== "function") {
    const timer = setTimeout(work, LATEST_MS);
    return () => clearTimeout(timer);
  }
  const handle = window.requestIdleCallback(work, { timeout: LATEST_MS });
  return () => window.cancelIdleCallback(handle);
}
