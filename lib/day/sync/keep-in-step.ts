/** What is kept in step: it reads what the device keeps, sends what waits, and reads anew from the server. */
export interface InStep {
  readonly reread: () => Promise<void>;
  readonly send: () => Promise<void>;
  readonly refresh: () => Promise<void>;
}

/** What the pages of one kind share on a device: their channel, and the lock of who sends. */
export interface PageKind {
  readonly channel: string;
  readonly lock: string;
}

export const DAY_PAGES: PageKind = { channel: "gylebook-day", lock: "gylebook-send" };
export const JUDGING_PAGES: PageKind = { channel: "gylebook-tasting", lock: "gylebook-send-tasting" };

const EVERY_MS = 30_000;

/** Tells the other pages of this device that something was kept. */
export function announceChange({ channel }: PageKind): void {
  if (typeof BroadcastChannel === "undefined") return;
  const told = new BroadcastChannel(channel);
  told.postMessage("changed");
  told.close();
}

/** Lets one page of a device at a time send; null for the others, which leave it to that one. */
export async function oneSender<T>({ lock }: PageKind, work: () => Promise<T>): Promise<T | null> {
  // Locks are missing where the page came over plain http; what is sent twice is kept once.
  if (!("locks" in navigator)) return work();
  return navigator.locks.request(lock, { ifAvailable: true }, async (held) => (held === null ? null : work()));
}

/**
 * Keeps a session in step with the device and the server: at once when the network is back or the page is seen again,
 * otherwise every half a minute. Ends with what it returns.
 */
export function keepInStep(session: InStep, pages: PageKind): () => void {
  const end = listenToPages(session, pages);
  const again = (): void => {
    if (document.visibilityState === "hidden") return;
    void session.send().then(() => session.refresh());
  };
  const timer = setInterval(() => void session.send(), EVERY_MS);
  addEventListener("online", again);
  document.addEventListener("visibilitychange", again);
  return () => {
    clearInterval(timer);
    removeEventListener("online", again);
    document.removeEventListener("visibilitychange", again);
    end();
  };
}

function listenToPages(session: InStep, pages: PageKind): () => void {
  if (typeof BroadcastChannel === "undefined") return () => undefined;
  const channel = new BroadcastChannel(pages.channel);
  channel.onmessage = () => void session.reread();
  return () => channel.close();
}
