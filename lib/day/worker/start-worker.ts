const listeners = new Set<() => void>();
let registration: ServiceWorkerRegistration | null = null;
let isApplying = false;

function changed(): void {
  for (const listener of listeners) listener();
}

export function onWorkerChange(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

/** Whether a newer version has been fetched and waits for somebody to want it. */
export function isUpdateReady(): boolean {
  return registration?.waiting !== null && registration?.waiting !== undefined && registration.active !== null;
}

/** Whether this page would start without a network. */
export function isWorking(): boolean {
  return registration?.active !== null && registration?.active !== undefined;
}

/** Lets the newer version take over, and starts the page anew with it. */
export function applyUpdate(): void {
  isApplying = true;
  registration?.waiting?.postMessage("take over");
}

/** Registers the worker that keeps the page itself on this device. */
export async function startWorker(scope: string): Promise<void> {
  if (!("serviceWorker" in navigator)) return;
  navigator.serviceWorker.addEventListener("controllerchange", () => {
    // The first worker takes the page as it is; only a brewer's own wish starts it anew.
    if (isApplying) location.reload();
    changed();
  });
  try {
    registration = await navigator.serviceWorker.register(`${scope}sw.js`, { scope, updateViaCache: "none" });
  } catch {
    return;
  }
  registration.addEventListener("updatefound", () => {
    registration?.installing?.addEventListener("statechange", changed);
  });
  registration.installing?.addEventListener("statechange", changed);
  changed();
}
