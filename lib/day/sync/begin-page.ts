import type { InStep } from "./keep-in-step";

interface KeptSession extends InStep {
  readonly snapshot: () => { readonly sheet: object | null };
}

/**
 * Opens a page that a device keeps. What is on the device is drawn at once. At a first visit there is nothing to draw until
 * the server has answered or is known to be away, and the page says by itself that it starts.
 */
export async function beginPage(session: KeptSession, open: () => void): Promise<void> {
  await session.reread();
  const isKept = session.snapshot().sheet !== null;
  if (isKept) open();
  try {
    await session.refresh();
  } finally {
    // A device that cannot keep what it was sent shows that it has nothing, and offers to try again.
    if (!isKept) open();
  }
  await session.send();
}
